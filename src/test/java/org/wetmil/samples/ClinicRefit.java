package org.wetmil.samples;

import java.util.List;

/** An invented small clinic: ten rooms, some forty lines, and a few setups that are wrong. */
final class ClinicRefit {
  private static final String HEADINGS =
      "Room | Floor | Surface | Condition | Length (ft) | Width (ft) | Height (ft) | Count"
          + " | Openings (ft²) | Coating | Colour | Sheen | Coats | Specified dry film (mil) | Tip"
          + " | Pressure (psi) | Sprayer | Texture | Mask edge (ft) | Mask openings | Include"
          + " | Notes";

  private static final int[] WIDTHS = {
    18, 8, 18, 18, 9, 9, 9, 8, 10, 16, 14, 10, 7, 11, 7, 10, 14, 12, 9, 9, 9, 34
  };

  private ClinicRefit() {}

  static SampleBook book() {
    return new SampleBook()
        .sheet(
            "Bid",
            List.of(
                "Clinic refit, spray painting (invented example)",
                "Every room, person and product here is made up.",
                ""),
            HEADINGS,
            WIDTHS,
            "Waiting room|Ground|walls|painted|24|18|9||74|Meadow Matt|Oat||2||517|2000|Shop machine||84|5",
            "Waiting room|Ground|ceiling|painted|24|18|9|||latex|White|flat|1||517||Shop machine||||no|owner may do this",
            "Waiting room|Ground|baseboard|painted|76|||||oil-based|White|gloss|2||210",
            "Waiting room|Ground|doors|painted||||4||oil-based|White|gloss|2||410",
            "Reception|Ground|walls|painted|14|12|9||38|Meadow Matt|Oat||2||517|2000|Shop machine||52|2",
            "Reception|Ground|ceiling|painted|14|12|9|||latex|White|flat|1||517",
            "Reception|Ground|cabinets|primed||||6||lacquer|Clear|satin|||309",
            "Exam 1|Ground|walls|new drywall|12|10|9||41|primer|||1||517|2000|||44|2",
            "Exam 1|Ground|walls|primed|12|10|9||41|Meadow Matt|Sage||2||521|2000||||||too coarse a tip",
            "Exam 1|Ground|ceiling|new drywall|12|10|9|||latex|White|flat|2||517",
            "Exam 1|Ground|door frames|primed||||1||oil-based|White|gloss|2||410",
            "Exam 2|Ground|walls|new drywall|12'|10' 6\"|9||41|primer|||1||517|2000|||44|2||lengths typed with marks",
            "Exam 2|Ground|walls|primed|12'|10' 6\"|9||41|Meadow Matt|Sage||2||517|900||||||pressure too low",
            "Exam 2|Ground|ceiling|new drywall|12|10.5|9|||latex|White|flat|2||517",
            "Exam 2|Ground|door frames|primed||||1||oil-based|White|gloss|2||410",
            "Exam 3|Ground|walls|painted|12|10|108||41|Meadow Matt|Sage||2||517|2000|||44|2||height typed in inches",
            "Exam 3|Ground|ceiling|painted|12|10|9|||latex|White|flat|1||517",
            "Exam 3|Ground|baseboard|painted|40|||||oil-based|White|gloss|2||517|||||||a wall tip on trim",
            "Corridor|Ground|walls|painted|62|6|9||126|Meadow Matt|Oat||2||517|2000|Shop machine||136|8",
            "Corridor|Ground|ceiling|painted|62|6|9|||latex|White|flat|1||517",
            "Corridor|Ground|doors|painted||||8||oil-based|White|gloss|2||410",
            "Corridor|Ground|doors|painted||||8||oil-based|White|gloss|2||410|||||||the same line twice",
            "Plant room|Ground|walls|concrete block|20|16|12||32|block filler|||1||517|2500|Shop machine|open block||1||a fine tip for filler",
            "Plant room|Ground|walls|primed|20|16|12||32|two-part|Grey|semi|2|12|519|2500|Shop machine|filled block",
            "Plant room|Ground|metal deck ceiling|new|20|16|14|||dry fall|White|flat|1||521|2000",
            "Plant room|Ground|floor|concrete|20|16||||two-part|Grey|gloss|2|8-12|517|2500",
            "Plant room|Ground|pipes|primed|90|||3||oil-based|Yellow|gloss|2||211|||||||girth not stated",
            "Laboratory|First|walls|painted|22|15|9||64|two-part|White|semi|2|10|519|2500|||74|4",
            "Laboratory|First|ceiling|painted|22|15|9|||latx|White|flat|1||517|||||||name misspelt",
            "Laboratory|First|cabinets|painted||||10||lacquer|Clear|satin|3||309",
            "Laboratory|First|windows|painted||||4||oil-based|White|gloss|2||209|||||4",
            "Staff room|First|walls|painted|16|14|9||560|Meadow Matt|Oat||2||517|2000|||60|3||openings larger than the walls",
            "Staff room|First|ceiling|painted|16|14|9|||latex|White|flat|1.5||517|||||||coats not whole",
            "Staff room|First|trim|painted|60|||||latex|White|satin|2||212",
            "Store|First|walls|painted|10|8|9||21|Meadow Matt|Oat||||'017|2000|||36|1||a tip without a fan",
            "Store|First|ceiling|painted|10||9|||latex|White|flat|1||517|||||||width missing",
            "Outside|Outside|exterior walls|painted|96||18||210|latex|Stone|satin|2||517|2200||stucco|96|12",
            "Outside|Outside|soffit|painted|96|2|18|||latex|White|satin|2||517",
            "Outside|Outside|fascia|weathered|96||18|||latex|White|satin|2||415",
            "Outside|Outside|exterior railing|painted|40||3.5|||oil-based|Black|gloss|2||209")
        .sheet(
            "Coatings",
            List.of(),
            "Coating | Class | Volume solids (%) | Wet film target (mil) | Container sizes | Price",
            new int[] {18, 14, 12, 12, 14, 14},
            "Meadow Matt|latex|38|4.6|1; 5|'38; 172",
            "latex|latex|||1; 5|'36; 148",
            "oil-based|oil-based|||1|52",
            "lacquer|lacquer|||1|61",
            "primer|primer|||1; 5|'28; 112.50",
            "block filler|block filler|||5|98",
            "dry fall|dry fall|||5|128",
            "two-part|two-part|||2|138")
        .sheet(
            "Sprayers",
            List.of(),
            "Sprayer | Greatest flow (gpm) | Greatest orifice (thou) | Greatest pressure (psi)"
                + " | Filter (mesh)",
            new int[] {18, 14, 14, 14, 10},
            "Shop machine|0.60|23|3000|60")
        .sheet(
            "Settings",
            List.of(),
            "Setting | Value | Unit",
            new int[] {20, 34, 8},
            "Job|Clinic refit (invented)|",
            "Waste|5|%",
            "Crew|2|",
            "Year built|1994|",
            "Contractor|Longshore Spray Works (invented)|",
            "Customer|Harbour Street Clinic (invented)|",
            "Exclusions|Moving of furniture and equipment; repair of plaster beyond filling small holes|",
            "Bid notes|Work is done on weekdays between 7 and 16|",
            "Currency|USD|",
            "Labour rate|34|",
            "Burden|28|%",
            "Access|650|",
            "Overhead|12|%",
            "Profit|10|%",
            "Rounding step|10|",
            "Tax on price|6|%");
  }
}
