"""One deliberately ugly workbook, as brokerages send them.

``python -m tests.intake.ugly OUT.xlsx`` writes it.

Headings in row 4 and in French, accounts that lost their zeros, an account split over two sheets,
amounts and dates in several spellings, merged cells, total rows, an error cell, a hidden sheet, and
rows that cannot be right. All organisations, people and places in it are invented.
"""

from __future__ import annotations

import sys
from datetime import date
from pathlib import Path

from openpyxl import Workbook
from openpyxl.styles import Font
from openpyxl.worksheet.worksheet import Worksheet

NARROW = "\u202f"  # the narrow space of French amounts
HARD = "\u00a0"  # the space that does not break
# fmt: off
ORGANISATIONS = (
    ("No client", "Nom légal", "Assuré désigné", "Type d'organisme", "N° d'enregistrement", "Prov.",
     "Ville", "Langue", "Fin d'exercice", "Date de renouvellement", "Cote interne"),
    (7, "Fabrique de Sainte-Odile-des-Pins", "Fabrique Sainte-Odile", "Paroisse",
     "811111115 RR 0001", "Québec", "Val-des-Pins", "français", "31 décembre", date(2026, 12, 31),
     "A"),
    (12, "Harbour Street Community Hall", "N/A", "Salle communautaire", "822222228RR0001", "N.-É.",
     "Port Ember", "anglais", "03-31", "2027-01-15", "B"),
    (31, "Camp du Lac-aux-Brumes", "", "Camp de vacances", "833333331RR0001", "QC",
     "Lac-aux-Brumes",
     "fr", "Sept 30", "31 janvier 2027", "B"),
    (44, "Banque alimentaire des Trois-Ponts", "", "Banque alimentaire", "844444444RR0001", "Ont.",
     "Trois-Ponts", "FR", "12-31", date(2027, 2, 1), ""),
    (45, "Trois-Ponts Food Share", "", "Food bank", "844444444RR0001", "Ont.", "Trois-Ponts",
     "English", "12-31", date(2027, 2, 1), ""),
    ("Total", "", "", "", "", "", "", "", "", "", 5),
)
BUILDING_HEADINGS = (
    "No de compte", "No de bâtiment", "Nom du bâtiment", "Adresse civique", "Propriété",
    "Construction", "Année de construction", "Superficie (pi²)", "Étages", "Sous-sol", "Gicleurs",
    "Alarme incendie", "Reliée à une centrale", "Clapet antiretour", "Patrimonial",
     "Toit refait en",
    "Éléments particuliers",
)
BUILDINGS_IN_QUEBEC = (
    BUILDING_HEADINGS,
    ("0007", "01", "Église", "1, rue des Pins", "propriétaire", "Pierre", 1897, f"12{HARD}400", 2,
     "non fini", "non", "oui", "x", "1", "Oui", 2009, "orgue; vitraux; clocher"),
    ("0007", "02", "Presbytère", "3, rue des Pins", "propriétaire", "bois", 1921, "2 150", 2,
     "fini",
     "non", "oui", "", "N/D", "non", 1998, ""),
    ("0031", "A", "Pavillon principal", "90, chemin du Lac", "propriétaire", "bois", "19x8",
     "6 000",
     1, "aucun", "non", "oui", "oui", "s/o", "non", 2016, ""),
    ("Sous-total", "", "", "", "", "", "", "20 550", "", "", "", "", "", "", "", "", ""),
)
BUILDINGS_ELSEWHERE = (
    BUILDING_HEADINGS,
    ("0012", "H1", "Main hall", "22 Harbour Street", "Owned", "Brick veneer", 1958, 7200, 1, "none",
     "N", "Y", "Y", "✓", "N", 2018, ""),
    ("0007", "03", "Chapelle du rang 4", "rang 4", "propriétaire", "bois", 1948, "900", 1, "aucun",
     "non", "non", "", "", "oui", "", ""),
)
VALUATIONS = (
    ("Compte", "Bâtiment", "Valeur à neuf", "Date d'évaluation", "Type d'évaluation", "Évaluateur"),
    ("0007", "01", f"4{NARROW}850{NARROW}000,00 $", "Jan-24", "Évaluation agréée", "Bureau Lorne"),
    ("0007", "02", f"612{HARD}500,50 $", "31/01/2024", "Évaluation agréée", "Bureau Lorne"),
    ("0007", "03", "(180 000)", "2019-06-01", "estimation", ""),
    ("0012", "main hall", "$1,950,000.00", "1er mars 2021", "desktop", ""),
    ("0012", "H9", "250 000 $", "2021-03-01", "desktop", ""),
)
POLICIES = (
    ("Compte", "Stade", "Date d'effet", "Date d'échéance", "Assureur", "No de police",
     "Réponse avant le"),
    ("0007", "Expiring", date(2025, 12, 31), date(2026, 12, 31), "Mutuelle des Érables", 4400017,
     ""),
    ("0007", "Offre", date(2026, 12, 31), date(2027, 12, 31), "Mutuelle des Érables", 4400017,
     "2026-12-11"),
    ("0012", "in force", date(2026, 1, 15), date(2027, 1, 15), "Northlight Mutual", "NL-220", ""),
)
COVERAGES = (
    ("Compte", "Date d'effet", "Stade", "Garantie", "Emplacement", "Montant d'assurance",
     "Franchise",
     "Coassurance %", "Base de règlement", "Franchise en pourcentage"),
    ("0007", date(2025, 12, 31), "Expiring", "Bâtiment", "01", f"4{NARROW}200{NARROW}000 $",
     "5 000",
     90, "Valeur à neuf", ""),
    ("", date(2025, 12, 31), "Expiring", "Bâtiment", "02", "540 000,00", "2500", 90,
     "Valeur à neuf", ""),
    ("", date(2025, 12, 31), "Expiring", "Refoulement d'égouts", "toutes", "25 000", "10 000", "",
     "", ""),
    ("", date(2025, 12, 31), "Expiring", "Tremblement de terre", "*", "2 000 000", "", "", "",
     "5 %"),
    ("0007", date(2026, 12, 31), "Offre", "Bâtiment", "01", "4 200 000", "10 000", 90,
     "Valeur à neuf", ""),
    ("0007", date(2026, 12, 31), "Offre", "Bâtiment", "02", "540 000", "10 000", 90,
     "Valeur à neuf", ""),
    ("0012", date(2026, 1, 15), "in force", "Building", "H1", "$1,600,000", "$2,500", "80", "RC",
     ""),
    ("0012", date(2026, 1, 15), "in force", "sewer bakcup", "H1", "$50,000", "$5,000", "", "", ""),
    ("Total", "", "", "", "", "9 155 000", "", "", "", ""),
)
PREMIUMS = (
    ("Compte", "Date d'effet", "Stade", "Garantie", "Emplacement", "Genre de prime", "Prime"),
    ("0007", date(2025, 12, 31), "Expiring", "Bâtiment", "01", "Prime", "11 340,00"),
    ("0007", date(2025, 12, 31), "Expiring", "Bâtiment", "02", "Prime", "1 512,00"),
    ("0007", date(2025, 12, 31), "Expiring", "Refoulement d'égouts", "*", "Surprime", "400"),
    ("0007", date(2026, 12, 31), "Offre", "Bâtiment", "01", "Prime", "13 020,00"),
    ("0007", date(2026, 12, 31), "Offre", "Bâtiment", "02", "Prime", "1 728,00"),
    ("Total", "", "", "", "", "", "=SUM(G5:G9)"),
)
CLAIMS = (
    ("Compte", "No de sinistre", "Nature du sinistre", "Date du sinistre", "Payé", "Réserve",
     "État",
     "En date du", "Circonstances"),
    ("0007", "S-101", "refoulement", "14 avril 2021", "18 250,00 $", "0", "fermé", "2026-09-30",
     "Sous-sol du presbytère inondé"),
    ("0007", "S-102", "Dégâts d'eau", date(2024, 2, 3), "7 410,25 $", "2 000,00 $", "Ouvert",
     "2026-09-30", "Tuyau gelé"),
    ("0007", "S-102", "Dégâts d'eau", date(2024, 2, 3), "7 410,25 $", "2 000,00 $", "Ouvert",
     "2026-09-30", "Tuyau gelé"),
    ("0007", "S-103", "vol", "03/04/2022", "610", "0", "fermé", "2026-09-30", "Troncs forcés"),
    ("0012", "NS-9", "Wind", "2023-09-17", 12800.1, 0, "closed", "2026-09-30", "Roof shingles"),
    ("0012", "NS-10", "slip and fall", "2022-05-05", 0, 15000, "open", "2026-09-30", ""),
    ("0012", "NS-10", "slip and fall", "2022-05-05", 0, 18000, "open", "2026-09-30", ""),
    ("0044", "T-1", "vol", "2020-11-11", 900, 0, "fermé", "2026-09-30", ""),
    ("0012", "NS-11", "fire", 0, 100, 0, "closed", "2026-09-30", ""),
    ("0012", "NS-12", "theft", "2021-08-08", 10**15, 0, "closed", "2026-09-30", ""),
    ("0012", "NS-13", "alien visit", "2021-08-09", 10, 0, "closed", "2026-09-30", ""),
    ("0012", "NS-14", "fire", "2021-08-10", "#REF!", 0, "closed", "2026-09-30", ""),
    ("99", "X-1", "fire", "2021-08-10", 10, 0, "closed", "2026-09-30", ""),
    ("Relevé préparé pour le renouvellement", "", "", "", "", "", "", "", ""),
)
# fmt: on
FIRST = 4  # the row of the headings


def _sheet(book: Workbook, name: str, rows: tuple[tuple[object, ...], ...]) -> Worksheet:
    page: Worksheet = book.create_sheet(name)
    page["A1"] = f"{name} — portefeuille des organismes"
    page.merge_cells("A1:D1")
    page["A2"] = "Confidentiel"
    for at, row in enumerate(rows, FIRST):
        for column, value in enumerate(row, 1):
            cell = page.cell(at, column)
            cell.value = None if value == "" else value  # type: ignore[assignment]
            cell.font = Font(bold=at == FIRST)
    return page


def build(path: Path) -> None:
    """Write the ugly workbook."""
    book = Workbook()
    del book["Sheet"]
    _sheet(book, "Organismes", ORGANISATIONS)
    _sheet(book, "Immeubles (Québec)", BUILDINGS_IN_QUEBEC)
    _sheet(book, "Immeubles ailleurs", BUILDINGS_ELSEWHERE)
    _sheet(book, "Évaluations", VALUATIONS)
    _sheet(book, "Polices", POLICIES)
    _sheet(book, "Garanties", COVERAGES).merge_cells(
        start_row=FIRST + 1, end_row=FIRST + 4, start_column=1, end_column=1
    )
    _sheet(book, "Primes", PREMIUMS)
    claims = _sheet(book, "Sinistres", CLAIMS)
    claims.cell(FIRST + 9, 4).number_format = "yyyy-mm-dd"  # zero, shown as a day of 1899
    claims.cell(FIRST + 12, 5).data_type = "e"
    _sheet(book, "Ancien fichier", (("Compte", "Nom"), (7, "Sainte-Odile"))).sheet_state = "hidden"
    _sheet(book, "Notes", (("À faire",), ("Appeler le trésorier",)))
    book.save(path)


if __name__ == "__main__":
    build(Path(sys.argv[1]))
