package org.wetmil.workbook.read;

import java.util.List;
import org.wetmil.estimate.Bid;

public record ReadWorkbook(
    Bid bid, List<SheetLayout> layouts, boolean filledBefore, List<String> ourSheets) {}
