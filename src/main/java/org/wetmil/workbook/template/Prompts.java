package org.wetmil.workbook.template;

import java.util.List;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidation.ErrorStyle;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.DataValidationConstraint.ValidationType;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.usermodel.XSSFDataValidationConstraint;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** What a cell says when it is selected, and the lists it offers. A list never forbids a word. */
final class Prompts {
  /** Lengths that the file format allows. */
  private static final int TITLE = 32;

  private static final int TEXT = 255;

  private final XSSFSheet sheet;
  private final DataValidationHelper helper;

  Prompts(XSSFSheet sheet) {
    this.sheet = sheet;
    this.helper = sheet.getDataValidationHelper();
  }

  /** A message alone. */
  void say(CellRangeAddressList cells, String title, String text) {
    add(new XSSFDataValidationConstraint(ValidationType.ANY, (String) null), cells, title, text);
  }

  /** A message and the words of a list. */
  void offer(CellRangeAddressList cells, List<String> words, String title, String text) {
    add(helper.createExplicitListConstraint(words.toArray(String[]::new)), cells, title, text);
  }

  /** A message and a list that a name of the workbook stands for. */
  void offer(CellRangeAddressList cells, String name, String title, String text) {
    add(helper.createFormulaListConstraint(name), cells, title, text);
  }

  private void add(
      DataValidationConstraint constraint, CellRangeAddressList cells, String title, String text) {
    DataValidation validation = helper.createValidation(constraint, cells);
    validation.createPromptBox(cut(title, TITLE), cut(sentence(text), TEXT));
    validation.setShowPromptBox(true);
    validation.setEmptyCellAllowed(true);
    if (constraint.getValidationType() == ValidationType.LIST) {
      // as the library has it, true shows the arrow
      validation.setSuppressDropDownArrow(true);
      validation.setErrorStyle(ErrorStyle.WARNING);
      validation.createErrorBox(
          "Not on the list", "Other words of the trade may be known too. Keep what you typed?");
      validation.setShowErrorBox(true);
    }
    sheet.addValidationData(validation);
  }

  /** Words of a declaration as a sentence. */
  static String sentence(String text) {
    if (text.isEmpty()) {
      return "Yours to fill.";
    }
    String begun = Character.toUpperCase(text.charAt(0)) + text.substring(1);
    return begun.endsWith(".") ? begun : begun + ".";
  }

  private static String cut(String text, int most) {
    return text.length() <= most ? text : text.substring(0, most - 3) + "...";
  }
}
