package org.wetmil.samples;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.wetmil.jobs.ReconcileJob;
import org.wetmil.jobs.ReconcileReport;
import org.wetmil.jobs.ReconcileRequest;

/**
 * Ledgers as three programs in three countries export them, each with its own kinds of mess, and a
 * table of items; all invented.
 */
public final class MessyBooks {
  static final String US =
      """
      "Tern Hollow, purchases (invented)",,,,,,,,,,

      "April 1, 2026 to April 30, 2026",,,,,,,,,,
      Date,Type,Num,Vendor,Job,Item,Description,Qty,UOM,Unit price,Amount
      4/1/26,Opening stock,C-1,,2211,PVA,PVA primer,2,gal,,
      4/2/26,Bill,N-1,Paint supplier,Owner:2211 Mill loft,LTX-5,"Latex eggshell, white
      second line of the item",4,pail of 5 gal,160.00,"$1,280.00"
      4/3/26,Bill,N-1,Paint supplier,2211,LTX-5,Latex eggshell white 5 gal,1,EA,160.00,160.00
      4/3/26,Bill,N-1,Paint supplier,2211,LTX-5,Latex eggshell white 5 gal,1,EA,160.00,160.00
      4/14/26,Credit,N-2,Paint supplier,Mill loft,LTX-5,Latex eggshell white 5 gal,-1,EA,160.00,(160.00)
      4/14/26,Bill,N-3,Paint supplier,2211,THIN,Lacquer thinner,2,gal,18.00,36.00
      4/15/26,Transfer,T-1,,2211,PVA,PVA primer,-1,gal,,
      4/15/26,Transfer,T-1,,2207 School gym,PVA,PVA primer,1,gal,,
      ,,,,,,,,,,
      4/16/26,Bill,N-4,Paint supplier,2207,HS-5,"Hall Semi, 5 gal",2,EA,185.00,370.00-
      4/17/26,Bill,N-5,Paint supplier,2207,HS-5,"Hall Semi, 5 gal",three,EA,185.00,555.00
      4/18/26,Bill,N-6,Paint supplier,2270,HS-5,"Hall Semi, 5 gal",1,EA,185.00,185.00
      4/19/26,Bill,N-7,Paint supplier,2207,"Brush 3"" wide",,4,EA,12.50,50.00
      4/20/26,Left over,C-2,,2211,LTX,Latex eggshell,2,qt,,
      4/21/26,Waste,C-2,,2211,LTX,Latex eggshell,1,pt,,
      TOTAL,,,,,,,,,,"$1,896.00"
      """;

  static final String GERMAN =
      """
      Einkäufe April (erfunden);;;;;;;;
      Belegdatum;Belegart;Beleg Nr.;Lieferant;Baustelle;Artikel;Menge;Einheit;Einzelpreis;Betrag (€)
      02.04.2026;Rechnung;R-1;Farbenhof;2211;Dispersion weiß;2;Eimer 12,5 L;95,00;190,00
      03.04.2026;Rechnung;R-2;Farbenhof;2207;Dispersion weiß;1;Kanister;1.295,50;1.295,50
      04.04.2026;Gutschrift;R-3;Farbenhof;2211;Dispersion weiß;1;Eimer 5 L;41,00;-41,00
      05.04.2026;Rechnung;R-4;Farbenhof;2211;Kunstharzverdünnung;5;L;4,20;21,00
      31.04.2026;Rechnung;R-5;Farbenhof;2211;Dispersion weiß;1;L;9,00;9,00
      Summe;;;;;;;;;1.474,50
      """;

  static final String SPANISH =
      """
      Fecha	Tipo	Factura	Proveedor	Obra	Artículo	Cantidad	Unidad	Importe
      24/04/2026	Compra	F-1	Pinturas	2211	Barn Stain	4	gal	180,00 €
      25/04/2026	Devolución	F-2	Pinturas	2211	Barn Stain	1	gal	45,00 €
      26/04/2026	Sobrante	F-3	Pinturas	2211	Barn Stain	500	mL\t
      """;

  private MessyBooks() {}

  /** Writes the ledgers and the table of items into a folder and reconciles them. */
  public static ReconcileReport write(Path folder, Path output) {
    Path items = text(folder, "items.csv", "Item,Coating\nDispersion Weiß,latex\n", UTF_8);
    return ReconcileJob.run(
        new ReconcileRequest(
            List.of(
                Samples.FOLDER.resolve("mill-loft.xlsx"),
                Samples.FOLDER.resolve("school-gym.xlsx")),
            List.of(
                text(folder, "us.csv", "\uFEFF" + US.replace("\n", "\r\n"), UTF_8),
                text(folder, "de.csv", GERMAN, Charset.forName("windows-1252")),
                text(folder, "es.tsv", "\uFEFF" + SPANISH, StandardCharsets.UTF_16LE)),
            items,
            null,
            null,
            null,
            output,
            true,
            LocalDate.of(2026, 5, 4),
            "sample"));
  }

  private static final Charset UTF_8 = StandardCharsets.UTF_8;

  private static Path text(Path folder, String name, String text, Charset charset) {
    try {
      return Files.write(folder.resolve(name), text.getBytes(charset));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
