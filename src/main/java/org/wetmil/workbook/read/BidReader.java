package org.wetmil.workbook.read;
import java.nio.file.Path;
public final class BidReader { public static ReadWorkbook read(Path p){ throw new UnsupportedOperationException(); } }
