package org.wetmil.workbook.fill.beside;

import java.time.LocalDate;

/** What a filled workbook says of how it came about. */
public record FillStamp(String inputName, String inputSha256, LocalDate date, String version) {}
