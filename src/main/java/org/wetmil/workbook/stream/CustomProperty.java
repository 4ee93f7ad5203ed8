package org.wetmil.workbook.stream;

/**
 * A property of the document that is none of the standard ones.
 *
 * @param name as given
 * @param value as text, whatever its type
 */
public record CustomProperty(String name, String value) {}
