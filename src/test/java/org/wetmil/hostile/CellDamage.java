package org.wetmil.hostile;

import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;

/** What is done to the cells, columns and styles of a sheet; the XML stays well formed. */
enum CellDamage {
  VALUE {
    @Override
    String to(String sheet, Random random) {
      return XmlDamage.replaced(
          sheet, "(?<=<v>)[^<]*(?=</v>)", random, Nasty.xml(Nasty.number(random)));
    }
  },
  MANY_VALUES {
    @Override
    String to(String sheet, Random random) {
      String with = Nasty.xml(Nasty.any(random));
      String changed = sheet;
      for (int i = 0; i < 12; i++) {
        changed = XmlDamage.replaced(changed, "(?<=<v>)[^<]*(?=</v>)", random, with);
      }
      return changed;
    }
  },
  TYPE {
    @Override
    String to(String sheet, Random random) {
      List<String> types = List.of("n", "s", "str", "b", "e", "d", "inlineStr", "z", "");
      return XmlDamage.replaced(
          sheet, "(?<= t=\")[^\"]*(?=\")", random, types.get(random.nextInt(types.size())));
    }
  },
  STYLE {
    @Override
    String to(String sheet, Random random) {
      return XmlDamage.replaced(
          sheet.replaceFirst("<c r=", "<c s=\"1\" r="),
          "(?<=<c[^>]{0,40} s=\")[^\"]*(?=\")",
          random,
          Nasty.count(random));
    }
  },
  ADDRESS {
    @Override
    String to(String sheet, Random random) {
      return XmlDamage.replaced(
          sheet, "(?<=<c[^>]{0,20} r=\")[^\"]*(?=\")", random, Nasty.place(random));
    }
  },
  ROW_NUMBER {
    @Override
    String to(String sheet, Random random) {
      return XmlDamage.replaced(
          sheet, "(?<=<row[^>]{0,40} r=\")[^\"]*(?=\")", random, Nasty.count(random));
    }
  },
  TEXT_IN_A_CELL {
    @Override
    String to(String sheet, Random random) {
      String cell = "<c t=\"inlineStr\"><is><t>" + Nasty.xml(Nasty.word(random)) + "</t></is></c>";
      return XmlDamage.replaced(sheet, "<c [^>]*+>(?:<v>[^<]*+</v>)?+</c>", random, cell);
    }
  },
  FORMULA {
    @Override
    String to(String sheet, Random random) {
      List<String> formulas =
          List.of(
              "<f>1+</f>",
              "<f>" + "(".repeat(9_000) + "</f>",
              "<f>" + "A1+".repeat(20_000) + "A1</f>",
              "<f t=\"shared\" si=\"99\"/>",
              "<f t=\"shared\" ref=\"A1:XFD1048576\" si=\"0\">A1+XFD1048576</f>",
              "<f t=\"array\" ref=\"A1:C9\">A1:C9*2</f>",
              "<f t=\"dataTable\" ref=\"B2:B9\" dt2D=\"1\" r1=\"A1\" r2=\"A2\"/>",
              "<f>'[1]No sheet'!A1</f>",
              "<f>WEBSERVICE(\"http://localhost:9/\")</f>",
              "<f>HYPERLINK(\"file:///etc/hostname\",\"x\")</f>");
      return XmlDamage.replaced(
          sheet, "(?=<v>)", random, formulas.get(random.nextInt(formulas.size())));
    }
  },
  AROUND_THE_ROWS {
    @Override
    String to(String sheet, Random random) {
      String count = Nasty.count(random);
      String place = Nasty.xml(Nasty.place(random));
      List<String> after =
          List.of(
              "<mergeCells count=\"1\"><mergeCell ref=\"" + place + "\"/></mergeCells>",
              "<autoFilter ref=\"" + place + "\"/>",
              "<conditionalFormatting sqref=\""
                  + place
                  + "\"><cfRule type=\"expression\" dxfId=\""
                  + count
                  + "\" priority=\""
                  + count
                  + "\"><formula>A1</formula></cfRule></conditionalFormatting>",
              "<dataValidations count=\""
                  + count
                  + "\"><dataValidation type=\"list\" sqref=\""
                  + place
                  + "\"><formula1>Nowhere!$A$1</formula1></dataValidation></dataValidations>",
              "<hyperlinks><hyperlink ref=\""
                  + place
                  + "\" r:id=\"rIdNone\" "
                  + "xmlns:r=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships\""
                  + "/></hyperlinks>",
              "<sheetProtection sheet=\"1\" objects=\"1\"/>");
      return sheet.replaceFirst(
          "</sheetData>|<sheetData/>",
          "$0" + Matcher.quoteReplacement(after.get(random.nextInt(after.size()))));
    }
  },
  BEFORE_THE_ROWS {
    @Override
    String to(String sheet, Random random) {
      String count = Nasty.count(random);
      List<String> before =
          List.of(
              "<dimension ref=\"" + Nasty.xml(Nasty.place(random)) + "\"/>",
              "<cols><col min=\"1\" max=\"1000000\" width=\"9\" customWidth=\"1\"/></cols>",
              "<cols><col min=\""
                  + count
                  + "\" max=\"16384\" width=\"1e9\" style=\""
                  + count
                  + "\"/></cols>",
              "<cols>" + "<col min=\"3\" max=\"9\" width=\"NaN\"/>".repeat(400) + "</cols>",
              "<sheetViews><sheetView workbookViewId=\""
                  + count
                  + "\"><pane xSplit=\""
                  + count
                  + "\" topLeftCell=\"B1\" state=\"frozen\"/></sheetView></sheetViews>",
              "<sheetFormatPr defaultRowHeight=\"" + count + "\"/>");
      return sheet.replaceFirst(
          "<sheetData", Matcher.quoteReplacement(before.get(random.nextInt(before.size()))) + "$0");
    }
  };

  abstract String to(String sheet, Random random);
}
