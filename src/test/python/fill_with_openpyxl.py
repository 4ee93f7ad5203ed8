"""The script that fill is compared with: a bid filled with openpyxl, as one would write it by hand.

Reads the bid, computes each line in plain Python, and writes formulas, formats and the lists of the
whole job. It does less than fill: openpyxl keeps no value beside a formula, so that the result
shows no figure until a spreadsheet program has computed it; headings, units and words are taken as
they stand in the invented bid; there are six findings, no likely ranges of the job, no charts, notes
or drawings.

Usage: fill_with_openpyxl.py BID.xlsx OUT.xlsx
"""

import math
import sys

from openpyxl import load_workbook
from openpyxl.formatting.rule import FormulaRule
from openpyxl.styles import Alignment, Font, PatternFill
from openpyxl.utils import get_column_letter
from openpyxl.workbook.defined_name import DefinedName

SHADE = PatternFill("solid", fgColor="ECF1F2")
HATCHED = PatternFill("lightUp", fgColor="C05000")
BOLD = Font(bold=True)
WRAP = Alignment(wrap_text=True, vertical="top")

# Only the time counts here, so that these figures are near the usual ones and no more.
# coating: target wet mil, density (water is 1), solids by volume, orifices, greatest wet film, psi
COATINGS = {
    "latex": (4.5, 1.32, 0.38, (13, 19), 6.0, 2000),
    "primer": (4.5, 1.3, 0.32, (13, 19), 6.0, 2000),
    "oil-based": (3.5, 1.14, 0.52, (9, 15), 5.0, 1800),
}
CLASSES = {"latex": "latex", "primer": "primer", "alkyd enamel": "oil-based"}
# surface: width of the work in inches, share of paint that stays on, pace, coats
SURFACES = {
    "walls": (400, 0.75, 1.0, 2),
    "ceiling": (400, 0.7, 0.9, 2),
    "trim": (4, 0.55, 0.4, 2),
}
CONDITIONS = {"new": 1000.0, "primed": 1739.0}
TIPS = [(fan, orifice) for fan in range(2, 9) for orifice in range(7, 33, 2)]
CONSTANTS = {
    "film_factor": (231.0 * 1000 / 60, "from units"),
    "spread_factor": (1604.17, "from units"),
    "waste": (0.03, "invented"),
    "flow_factor": (0.0000311, "from units"),
    "discharge_coefficient": (0.83, "invented"),
    "pace_factor": (25.0, "from units"),
    "joinery_slowest": (8.0, "invented"),
    "joinery_fastest": (24.0, "invented"),
    "height_step_1": (10.0, "invented"),
    "height_step_2": (14.0, "invented"),
    "height_step_3": (20.0, "invented"),
    "height_to_step_1": (1.0, "invented"),
    "height_to_step_2": (1.15, "invented"),
    "height_to_step_3": (1.3, "invented"),
    "height_over_step_3": (1.5, "invented"),
    "girth": (4.0, "invented"),
    "overlap": (0.5, "invented"),
}
FILLED = [
    ("Net area (ft²)", "#,##0.0"),
    ("Recommended orifice (thou)", "#,##0"),
    ("Recommended fan (in)", "#,##0"),
    ("Tip code", "0"),
    ("Pressure to set (psi)", "#,##0"),
    ("Gun speed (in/s)", "#,##0.0"),
    ("Coats to apply", "#,##0"),
    ("Wet film per coat (mil)", "#,##0.0"),
    ("Dry film total (mil)", "#,##0.0"),
    ("Spread (ft²/gal)", "#,##0"),
    ("Paint (gal)", "#,##0.00"),
    ("Labour (h)", "#,##0.00"),
    ("Coating used", "General"),
    ("Counted", "#,##0"),
    ("Flow (gpm)", "#,##0.000"),
    ("Spray (h)", "#,##0.00"),
    ("Back-roll time (h)", "#,##0.00"),
    ("Masking (h)", "#,##0.00"),
    ("Preparation (h)", "#,##0.00"),
    ("Paint low (gal)", "#,##0.00"),
    ("Paint high (gal)", "#,##0.00"),
    ("Labour low (h)", "#,##0.00"),
    ("Labour high (h)", "#,##0.00"),
    ("Findings", "General"),
]
HEIGHT = (
    "IF(I{r}<=b_height_step_1,b_height_to_step_1,IF(I{r}<=b_height_step_2,b_height_to_step_2,"
    "IF(I{r}<=b_height_step_3,b_height_to_step_3,b_height_over_step_3)))"
)
HOURS = [
    "Sheet", "Floor", "Room", "Surface", "Coating", "Colour", "Sheen", "Counted", "Net area (ft²)",
    "Paint (gal)", "Spray (h)", "Back-roll (h)", "Masking (h)", "Preparation (h)", "Labour (h)",
    "Room key", "Order key",
]
MOST_PAGES = 1000
STEPS = ["Runs or sags", "Clogs often", "Heavy edges, tails", "Too thick", "Too thin"]


def height_factor(height):
    for step in (1, 2, 3):
        if height <= CONSTANTS[f"height_step_{step}"][0]:
            return CONSTANTS[f"height_to_step_{step}"][0]
    return CONSTANTS["height_over_step_3"][0]


def flow(orifice, psi, density):
    k = CONSTANTS["flow_factor"][0] * CONSTANTS["discharge_coefficient"][0]
    return k * orifice * orifice * math.sqrt(psi / density)


def choose(coating, surface):
    """The tip that lays the target film at a comfortable pace, with the widest fan."""
    wet, density, _, (finest, coarsest), _, psi = COATINGS[coating]
    width, stays = SURFACES[surface][:2]
    slow, fast = CONSTANTS["joinery_slowest"][0], CONSTANTS["joinery_fastest"][0]
    best = None
    for fan, orifice in TIPS:
        inches = 2 * fan
        if not finest <= orifice <= coarsest or inches > max(4, width):
            continue
        gpm = flow(orifice, psi, density)
        pace = CONSTANTS["film_factor"][0] * gpm * stays / (wet * inches)
        off = max(slow - pace, pace - fast, 0)
        key = (off, -inches, abs(pace - (slow + fast) / 2))
        if best is None or key < best[0]:
            best = (key, fan, orifice, gpm, min(fast, max(slow, pace)))
    return best[1:]


class Line:
    """One line of the bid with its figures."""

    def __init__(self, row, cells):
        self.row = row
        floor, room, surface, condition, coating, colour, length, width, height, tip = cells
        self.floor, self.room, self.surface, self.colour = floor, room, surface, colour
        self.coating = CLASSES[coating]
        wet, self.density, solids, self.orifices, self.most_wet, self.psi = COATINGS[self.coating]
        _, self.stays, self.pace, coats = SURFACES[surface]
        self.coats = 1 if self.coating == "primer" else coats
        self.solids, self.height = solids, height
        if surface == "walls":
            self.area = 2 * (length + width) * height
            self.measure = f"=2*(G{row}+H{row})*I{row}"
        elif surface == "ceiling":
            self.area = length * width
            self.measure = f"=G{row}*H{row}"
        else:
            self.area = length * CONSTANTS["girth"][0] / 12
            self.measure = f"=G{row}*b_girth/12"
        self.fan, self.orifice, self.gpm, self.speed = choose(self.coating, surface)
        inches = 2 * self.fan
        self.wet = CONSTANTS["film_factor"][0] * self.gpm * self.stays / (self.speed * inches)
        self.dry = self.wet * solids * self.coats
        narrow = min(1, 4 / inches) if surface == "trim" else 1
        waste = CONSTANTS["waste"][0]
        self.spread = CONSTANTS["spread_factor"][0] * self.stays * narrow * (1 - waste) / self.wet
        self.paint = self.area * self.coats / self.spread
        high = height_factor(height)
        pace = CONSTANTS["pace_factor"][0] * self.speed * inches * 0.5 * narrow * self.pace
        self.spray = self.area * self.coats / pace * high
        self.dust = CONDITIONS[condition]
        self.preparation = self.area / self.dust * high
        self.labour = self.spray + self.preparation
        self.findings = list(self.look(str(tip) if tip else ""))

    def look(self, tip):
        if not tip:
            return
        fan, orifice = int(tip[0]), int(tip[1:])
        ours = f"{self.fan}{self.orifice:02d}"
        fastest = CONSTANTS["joinery_fastest"][0]
        wet = CONSTANTS["film_factor"][0] * flow(orifice, self.psi, self.density) * self.stays
        wet /= fastest * 2 * fan
        if orifice > self.orifices[1]:
            yield ("warning", "orifice-too-coarse", f"Tip: The {orifice} thou of {tip} is coarser "
                   f"than {self.orifices[1]} thou; use {ours}.", f"{orifice} thou",
                   f"{self.orifices[1]} thou", "It floods the surface.", "Take a finer orifice.")
        if orifice < self.orifices[0]:
            yield ("warning", "orifice-too-fine", f"Tip: The {orifice} thou of {tip} is finer "
                   f"than {self.orifices[0]} thou; use {ours}.", f"{orifice} thou",
                   f"{self.orifices[0]} thou", "It clogs.", "Take a coarser orifice.")
        if 2 * fan > max(4, SURFACES[self.surface][0]):
            yield ("warning", "fan-too-wide", f"Tip: The {2 * fan} in fan of {tip} is wider than "
                   f"the work; use {ours}.", f"{2 * fan} in", "4 in", "Paint is lost.",
                   "Take a narrower fan.")
        if wet > self.most_wet:
            yield ("warning", "film-too-thick", f"Tip: {tip} lays {wet:.1f} mil wet even at "
                   f"{fastest:g} in/s, over {self.most_wet:g} mil; use {ours}.", f"{wet:.1f} mil",
                   f"{self.most_wet:g} mil", "It runs.", "Take a finer orifice.")
        yield ("note", "tip-compared", f"Note on Tip: Planned {tip}: {wet:.1f} mil wet; "
               f"recommended {ours}: {self.wet:.1f} mil, {self.paint:.2f} gal.", f"{wet:.1f} mil",
               "", "", "")

    def cells(self):
        r, narrow = self.row, "*MIN(1,4/M{0})".format(self.row) if self.surface == "trim" else ""
        high = HEIGHT.format(r=r)
        share = math.sqrt(self.stays * (1 - self.stays)) / 2
        return (
            self.measure,
            self.orifice,
            2 * self.fan,
            int(f"{self.fan}{self.orifice:02d}"),
            self.psi,
            f"=MAX(b_joinery_slowest,MIN(b_joinery_fastest,b_film_factor*Y{r}*b_stays_{self.surface}"
            f"/(b_wet_{self.key}*M{r})))",
            self.coats,
            f"=b_film_factor*Y{r}*b_stays_{self.surface}/(P{r}*M{r})",
            f"=R{r}*b_solids_{self.key}*Q{r}",
            f"=b_spread_factor*b_stays_{self.surface}*b_overlap{narrow}*(1-b_waste)/R{r}",
            f"=K{r}*Q{r}/T{r}",
            f"=Z{r}+AA{r}+AB{r}+AC{r}",
            self.coating,
            1,
            f"=b_flow_factor*b_discharge_coefficient*L{r}*L{r}*SQRT(O{r}/b_density_{self.key})",
            f"=K{r}*Q{r}/(b_pace_factor*P{r}*M{r}*b_overlap{narrow}*b_pace_{self.surface})*{high}",
            "=0",
            "=0",
            f"=K{r}/{self.dust:g}*{high}",
            f"=U{r}*{1 - share!r}",
            f"=U{r}*{1 + share!r}",
            f"=V{r}+Z{r}*(-{share!r})",
            f"=V{r}+Z{r}*{2 * share!r}",
            "\n".join(each[2] for each in self.findings),
        )

    @property
    def key(self):
        return self.coating.replace("-", "_")


def heading(sheet, row, texts):
    for column, text in enumerate(texts, 1):
        cell = sheet.cell(row, column, text)
        cell.font = BOLD
        cell.alignment = WRAP


def widths(sheet, values):
    for column, value in enumerate(values, 1):
        sheet.column_dimensions[get_column_letter(column)].width = value


def listed(book, title, headings, most):
    sheet = book.create_sheet(title)
    heading(sheet, 1, headings)
    sheet.freeze_panes = "A2"
    sheet.auto_filter.ref = f"A1:{get_column_letter(len(headings))}{most}"
    widths(sheet, [18] * len(headings))
    return sheet


def basis(book):
    sheet = book.create_sheet("Basis")
    heading(sheet, 1, ["What", "", "", "Value", "Unit", "Kind"])
    values = dict(CONSTANTS)
    for name, (wet, density, solids, *_) in COATINGS.items():
        key = name.replace("-", "_")
        values["wet_" + key] = (wet, "invented")
        values["density_" + key] = (density, "invented")
        values["solids_" + key] = (solids, "invented")
    for name, (_, stays, pace, _) in SURFACES.items():
        values["stays_" + name] = (stays, "invented")
        values["pace_" + name] = (pace, "invented")
    for row, (name, (value, kind)) in enumerate(values.items(), 2):
        sheet.cell(row, 1, name)
        sheet.cell(row, 4, value).number_format = "0.####"
        sheet.cell(row, 6, kind)
        defined = DefinedName("b_" + name, attr_text=f"Basis!$D${row}")
        if hasattr(book.defined_names, "append"):
            book.defined_names.append(defined)
        else:  # a mapping since openpyxl 3.1
            book.defined_names[defined.name] = defined


def fill_rows(bid, lines):
    first = 11
    heading_cells = [text for text, _ in FILLED]
    for at, text in enumerate(heading_cells):
        cell = bid.cell(1, first + at, text)
        cell.font = BOLD
        cell.alignment = WRAP
    for line in lines:
        for at, value in enumerate(line.cells()):
            cell = bid.cell(line.row, first + at, value)
            cell.number_format = FILLED[at][1]
            cell.fill = SHADE
    last = lines[-1].row
    bid.conditional_formatting.add(
        f"J2:J{last}", FormulaRule(formula=['ISNUMBER(SEARCH("Tip:",$AH2))'], fill=HATCHED))


def write_hours(book, bid, lines):
    sheet = listed(book, "Hours", HOURS, len(lines) + 1)
    q = f"'{bid.title}'!"
    for row, line in enumerate(lines, 2):
        r = line.row
        values = [bid.title]
        values += [f"=TRIM(CLEAN({q}${c}${r}))" for c in "ABC"]
        values += [f"=T({q}$W${r})", f"=TRIM(CLEAN({q}$F${r}))", ""]
        values += [f"=SUM({q}${c}${r})" for c in ("X", "K", "U", "Z", "AA", "AB", "AC", "V")]
        values += [f'=B{row}&" · "&C{row}', f'=E{row}&" · "&F{row}&" · "&G{row}']
        for column, value in enumerate(values, 1):
            cell = sheet.cell(row, column, value)
            if 8 < column < 16:
                cell.number_format = "#,##0.00"


def write_findings(book, bid, lines):
    found = [(line, each) for line in lines for each in line.findings]
    found.sort(key=lambda pair: pair[1][0] != "warning")
    sheet = listed(book, "Findings", [
        "Severity", "Check", "Room", "Surface", "Finding", "Measured", "Limit", "Why",
        "What to do", "Cell"], len(found) + 1)
    for row, (line, each) in enumerate(found, 2):
        severity, check, message, measured, limit, why, advice = each
        link = f'=HYPERLINK("#\'{bid.title}\'!J{line.row}","{bid.title}!J{line.row}")'
        values = (severity, check, line.room, line.surface, message, measured, limit, why, advice)
        for column, value in enumerate(values + (link,), 1):
            sheet.cell(row, column, value).alignment = WRAP


def grouped(lines, key):
    groups = {}
    for line in lines:
        groups.setdefault(key(line), []).append(line)
    return groups


def write_summary(book, lines):
    sheet = book.create_sheet("Summary", 1)
    row = 1
    for title, key, column, most in (
            ("By floor", lambda line: line.floor, "B", 10),
            ("By room", lambda line: line.room, "C", 30),
            ("By coating", lambda line: line.coating, "E", 10)):
        heading(sheet, row, [title, "Net area (ft²)", "Paint (gal)", "Labour (h)"])
        groups = grouped(lines, key)
        by_size = sorted(groups, key=lambda name: -sum(each.labour for each in groups[name]))
        for name in by_size[:most]:
            row += 1
            sheet.cell(row, 1, name)
            for at, sums in enumerate("IJO", 2):
                sheet.cell(row, at, f"=SUMIFS(Hours!${sums}:${sums},Hours!$H:$H,1,"
                           f'Hours!${column}:${column},"{name}")').number_format = "#,##0.0"
        row += 3
    widths(sheet, [30, 14, 14, 14])


def write_order(book, lines):
    sheet = listed(book, "Order", ["Paint", "Colour", "Need (gal)", "Containers of 5 gal"], 20)
    for row, ((coating, colour), each) in enumerate(
            grouped(lines, lambda line: (line.coating, line.colour)).items(), 2):
        sheet.cell(row, 1, coating)
        sheet.cell(row, 2, colour)
        sheet.cell(row, 3, f"=SUMIFS(Hours!$J:$J,Hours!$E:$E,A{row},Hours!$F:$F,B{row})")
        sheet.cell(row, 4, math.ceil(sum(line.paint for line in each) / 5))


def write_plan(book, rooms):
    sheet = listed(book, "Plan", ["Floor", "Room", "From day", "To day", "Hours"], MOST_PAGES)
    spent = 0.0
    for row, ((floor, room), lines) in enumerate(list(rooms.items())[:MOST_PAGES], 2):
        hours = sum(line.labour for line in lines)
        for column, value in enumerate(
                (floor, room, int(spent / 16) + 1, int((spent + hours) / 16) + 1, hours), 1):
            sheet.cell(row, column, value)
        spent += hours


def write_crew(book, rooms):
    sheet = book.create_sheet("Crew")
    row = 1
    for (floor, room), lines in list(rooms.items())[:MOST_PAGES]:
        sheet.cell(row, 1, room).font = BOLD
        sheet.cell(row + 1, 1, floor)
        heading(sheet, row + 2, ["Surface", "Coating", "Tip", "Pressure", "Hand pace",
                                 "Wet gauge", "Coats", "Fan, orifice", "Filter"])
        row += 3
        for line in lines:
            values = (line.surface, f"{line.coating}, {line.colour}",
                      f"{line.fan}{line.orifice:02d}", line.psi, round(120 / line.speed, 1),
                      round(line.wet, 1), line.coats, f"{2 * line.fan} in", "60 mesh")
            for column, value in enumerate(values, 1):
                sheet.cell(row, column, value).alignment = WRAP
            row += 1
        for step in STEPS:
            sheet.cell(row, 1, step)
            sheet.cell(row, 3, "see the data sheet")
            row += 1
    widths(sheet, [14] * 9)


def main(source, target):
    book = load_workbook(source)
    bid = book.worksheets[0]
    lines = [
        Line(row, cells[:10])
        for row, cells in enumerate(bid.iter_rows(min_row=2, values_only=True), 2)
    ]
    fill_rows(bid, lines)
    rooms = grouped(lines, lambda line: (line.floor, line.room))
    write_summary(book, lines)
    write_findings(book, bid, lines)
    write_hours(book, bid, lines)
    write_order(book, lines)
    write_plan(book, rooms)
    write_crew(book, rooms)
    basis(book)
    book.save(target)


if __name__ == "__main__":
    main(*sys.argv[1:])
