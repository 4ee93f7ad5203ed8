package org.wetmil.samples;

import java.util.List;

/** An invented school gym hall in metric units: high walls, a steel deck, rooms around it. */
final class SchoolGym {
  private static final String HEADINGS =
      "Room | Floor | Surface | Condition | Length (m) | Width (m) | Height (m) | Count"
          + " | Area (m²) | Openings (m²) | Girth (mm) | Coating | Colour | Sheen | Coats"
          + " | Specified dry film (µm) | Tip | Pressure (bar) | Sprayer | Texture | Thinner (%)"
          + " | Mask edge (m) | Mask openings | Include | Notes";

  private static final int[] WIDTHS = {
    18, 8, 18, 18, 9, 9, 9, 8, 9, 10, 9, 16, 14, 10, 7, 12, 7, 10, 14, 12, 9, 9, 9, 9, 34
  };

  private SchoolGym() {}

  static SampleBook book() {
    return new SampleBook()
        .sheet(
            "Bid",
            List.of(
                "School gym hall, spray painting (invented example)",
                "Every room, person and product here is made up.",
                ""),
            HEADINGS,
            WIDTHS,
            "Hall|Ground|walls|painted|27|15|3|||14||Harbour Wall|Sand|satin|2||517|150|Tall machine|||84|6",
            "Hall|Ground|walls|block|27|15|4.5|||18||block filler|||1||531|170|Tall machine|open block|||6||above the lower walls",
            "Hall|Ground|walls|primed|27|15|4.5|||18||Harbour Wall|Chalk|satin|2||517|150|Tall machine|filled block",
            "Hall|Ground|metal deck ceiling|primed|27|15|7.5|||||dry fall|White|flat|1||519|150|Tall machine",
            "Hall|Ground|columns|primed|7.2|||8|||1200|two-part|Blue|semi|2|200|517|175|Tall machine||||||a fan wider than the column",
            "Hall|Ground|pipes|bare metal|62||||||180|oil-based|Grey|gloss|2||211|125|Light machine||||||bare metal and no primer",
            "Hall|Ground|doors|painted||||4||||oil-based|Blue|gloss|2||410||Light machine",
            "Hall|Ground|trim|painted|84||||||120|oil-based|Blue|gloss|2||519||Light machine||||||a wall tip on trim",
            "Equipment store|Ground|walls|block|9|5|3.2|||||block filler|||1||517|170|Tall machine|open block|||3||a fine tip for filler",
            "Equipment store|Ground|walls|primed|9|5|3.2|||||latex|Chalk|satin|2||517|60|Tall machine|filled block|||||pressure too low",
            "Equipment store|Ground|floor|concrete|9|5||||||two-part|Grey|gloss|2|200-300|517|175|Tall machine|smooth",
            "Changing room A|Ground|walls|painted|8|6|2.8|||||two-part|White|semi|2|200|517|175|Tall machine|||34|3",
            "Changing room A|Ground|ceiling|new drywall|8|6|2.8|||||primer|||1||517|140|Light machine",
            "Changing room A|Ground|ceiling|primed|8|6|2.8|||||latex|White|flat|2||517|140|Light machine",
            "Changing room A|Ground|cabinets|painted||||18||||lacquer|Blue|satin|2||309||Light machine||||18||locker fronts",
            "Changing room A|Ground|trim|bare wood|42||||||300|stain|Oak||1||410|90|Light machine||||||bench slats",
            "Changing room B|Ground|walls|painted|8 m|6 m|2800 mm|||||two-part|White|semi|2|200|517|175|Tall machine|||34|3||sizes typed with units",
            "Changing room B|Ground|ceiling|painted|8|6|2.8|||||latex|White|flat|1||525|140|Light machine||||||a tip that the machine cannot feed",
            "Changing room B|Ground|cabinets|painted||||18||||lacquer|Blue|satin|2||309||Light machine||35||18||thinned past the limit",
            "Changing room B|Ground|trim|bare wood|42||||||300|stain|Oak||1||410|90|Light machine|||||no|bench slats, owner may do this",
            "Corridor|Ground|walls|painted|18|2.4|2.8||96|||Harbour Wall|Sand|satin|2||517|150|Tall machine|||42|7||area and dimensions do not agree",
            "Corridor|Ground|ceiling|painted|18|2.4|2.8|||||latex|White|flat|1||517|140|Light machine",
            "Corridor|Ground|doors|painted||||7||||oil-based|Blue|gloss|2||410||Light machine",
            "Gallery|First|walls|painted|15|3|2.6|||9||Harbour Wal|Chalk|satin|2||517|150|Tall machine|||26|2||name misspelt",
            "Gallery|First|open railing|primed|15||1.1|||||oil-based|Black|gloss|2||209||Light machine")
        .sheet(
            "Coatings",
            List.of(),
            "Coating | Class | Volume solids (%) | Wet film min (µm) | Wet film target (µm)"
                + " | Wet film max (µm) | Density (kg/L) | Usual pressure (bar)"
                + " | Recoat (h) | VOC ready (g/L) | VOC category | Container sizes | Price",
            new int[] {18, 14, 12, 12, 12, 12, 12, 14, 10, 10, 28, 14, 14},
            "Harbour Wall|latex|41|90|120|170|1.32|140|5|26"
                + "|EU a matt inside walls and ceilings waterborne|5; 15|'48; 129")
        .sheet(
            "Film readings",
            List.of(),
            "Room | Surface | Spot | Reading (µm)",
            new int[] {20, 14, 8, 12},
            "Changing room A|walls|1|188",
            "Changing room A|walls|1|196",
            "Changing room A|walls|1|204",
            "Changing room A|walls|2|172",
            "Changing room A|walls|2|181",
            "Changing room A|walls|2|166",
            "Changing room A|walls|3|121",
            "Changing room A|walls|3|118",
            "Changing room A|walls|3|127",
            "Changing room A|walls|4|210",
            "Changing room A|walls|4|201",
            "Changing room A|walls|4|195")
        .sheet(
            "Sprayers",
            List.of(),
            "Sprayer | Greatest flow (L/min) | Greatest orifice (mm) | Greatest pressure (bar)"
                + " | Hose bore (mm) | Hose length (m) | Rise (m) | Filter (mesh)",
            new int[] {18, 14, 14, 14, 10, 10, 10, 10},
            "Tall machine|3.8|0.79|230|9.5|30|6|60",
            "Light machine|1.6|0.53|200|6.4|15|0|100")
        .sheet(
            "Openings",
            List.of(),
            "Room | Surface | Kind | Width (m) | Height (m) | Count | Reveal (mm) | Id",
            new int[] {18, 12, 14, 10, 10, 8, 10, 8},
            "Equipment store|walls|garage door|3|2.5|1|150|",
            "Equipment store|walls|door|0.9|2.1|1||E1",
            "Changing room A|walls|door|0.9|2.1|1||A1",
            "Changing room A|walls|window|1.2|0.6|4||",
            "Changing room B|walls|door|0.9|2.1|1||B1",
            "Changing room B|walls|window|1.2|0.6|4||",
            "Corridor|walls|door|0.9|2.1|7||",
            "Corridor|walls|opening|3.2|2.5|1|120|",
            "Coridor|walls|window|1.2|1|2||")
        .sheet(
            "Settings",
            List.of(),
            "Setting | Value | Unit",
            new int[] {22, 34, 8},
            "Job|School gym hall (invented)|",
            "Units|metric|",
            "Measuring rule|DIN 18363|",
            "Show measuring|yes|",
            "Currency|EUR|",
            "Waste|6|%",
            "Crew|3|",
            "Year built|1986|",
            "Air temperature|14|°C",
            "Surface temperature|12|°C",
            "Humidity|70|%")
        .onA4();
  }
}
