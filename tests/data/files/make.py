"""Makes the workbooks of this folder: eight prices of one column, hidden wherever a workbook can keep them.
Needs XlsxWriter, openpyxl and LibreOffice: python3 make.py. The tests only read the files."""
import os, subprocess, sys
import openpyxl
import xlsxwriter
from openpyxl.chart import BarChart, Reference
from openpyxl.comments import Comment
from openpyxl.workbook.defined_name import DefinedName

HERE = os.path.dirname(os.path.abspath(__file__))
PRICES = [4817.25, 731.5, 9264, 58213, 640.75, 7391, 2856.5, 10477]
BUYERS = ["Ama", "Bisi", "Chidi", "Dayo", "Efe", "Funke", "Gozie", "Hauwa"]
FISH = [500, 600, 700, 800, 900, 1100, 1200, 1300]


def book(name):
    made = xlsxwriter.Workbook(os.path.join(HERE, name))
    made.set_properties({"created": __import__("datetime").datetime(2026, 1, 1)})
    sheet = made.add_worksheet("Orders")
    sheet.write_row(0, 0, ["Buyer", "Fish", "Price"])
    for i in range(8):
        sheet.write_row(i + 1, 0, [BUYERS[i], FISH[i], PRICES[i]])
    return made, sheet


def formulas():
    made, orders = book("formulas.xlsx")
    s = made.add_worksheet("Plan")
    s.write_dynamic_array_formula("A1:A8", "=FILTER(Orders!C2:C9,Orders!B2:B9>0)", None, PRICES[0])
    for i in range(1, 8):
        s.write_number(i, 0, PRICES[i])
    s.write_array_formula("B1:I1", "{=TRANSPOSE(Orders!C2:C9)}", None, PRICES[0])
    for i in range(1, 8):
        s.write_number(0, 1 + i, PRICES[i])
    one = [("=VLOOKUP(\"Bisi\",Orders!A2:C9,3,FALSE)", 731.5), ("=INDEX(Orders!C2:C9,3)", 9264),
           ("=MAX(Orders!C2:C9)", 58213), ("=MIN(Orders!C2:C9)", 640.75), ("=LARGE(Orders!C2:C9,2)", 10477),
           ("=SUMIF(Orders!A2:A9,\"Funke\",Orders!C2:C9)", 7391), ("=OFFSET(Orders!C1,7,0)", 2856.5),
           ("=INDIRECT(\"Orders!C\"&2)", 4817.25), ("=Orders!C3+0", 731.5), ("=B10*1", 731.5),
           ("=SUM(Orders!C2:C9)", sum(PRICES)), ("=SUM(Orders!C2:C8)", sum(PRICES[:7])),
           ("=AVERAGE(Orders!C2:C9)", sum(PRICES) / 8), ("=COUNT(Orders!C2:C9)", 8),
           ("=SUM(Orders!C2:C3)", 5548.75), ("=IF(Orders!C3=731.5,\"731.5 it is\",\"no\")", "731.5 it is"),
           ("=TEXT(Orders!C2,\"#,##0.00\")&\" NGN\"", "4,817.25 NGN"), ("=SUM(A1:A8)", sum(PRICES)),
           ("=MEDIAN(Orders!C2:C4)", 4817.25), ("=Orders!C2:C9", 640.75)]
    for i, (formula, value) in enumerate(one):
        s.write_formula(1 + i, 1, formula, None, value)
    made.define_name("dearest", "=MAX(Orders!$C$2:$C$9,58213)")
    s.write_formula("D3", "=dearest", None, 58213)
    made.close()


def charts():
    made, orders = book("charts.xlsx")
    for kind in ("line", "column", "pie"):
        chart = made.add_chart({"type": kind})
        chart.add_series({"categories": "=Orders!$A$2:$A$9", "values": "=Orders!$C$2:$C$9", "name": "=Orders!$C$1",
                          "data_labels": {"custom": [{"value": "=Orders!$C$2"}]}})
        chart.set_title({"name": "=Orders!$C$4"})
        orders.insert_chart("F2", chart)
    orders.autofilter("A1:C9")
    orders.filter_column_list("C", [4817.25, 731.5])
    made.close()


def notes():
    made, orders = book("notes.xlsx")
    orders.write_comment("C2", "agreed at 4817.25 by telephone")
    orders.write_url("C3", "https://example.org/offer/731.5", string="731.5")
    orders.data_validation("E2", {"validate": "list", "source": "=Orders!$C$2:$C$9"})
    orders.conditional_format("C2:C9", {"type": "cell", "criteria": ">", "value": 9264,
                                        "format": made.add_format({"bold": True})})
    orders.conditional_format("A2:A9", {"type": "formula", "criteria": "=$C2=7391",
                                        "format": made.add_format({"bold": True})})
    orders.insert_textbox("H2", "", {"textlink": "=Orders!$C$5"})
    orders.insert_textbox("H9", "58213", {"textlink": "=Orders!$C$5"})
    made.close()


def table():
    made = xlsxwriter.Workbook(os.path.join(HERE, "table.xlsx"))
    s = made.add_worksheet("Orders")
    s.add_table("A1:E10", {"name": "T", "total_row": True, "data": [
        [BUYERS[i], FISH[i], PRICES[i], FISH[i] * PRICES[i], PRICES[i] / 2] for i in range(8)], "columns": [
        {"header": "Buyer", "total_string": "Total"}, {"header": "Fish", "total_function": "sum"},
        {"header": "Price", "total_function": "max", "total_value": 58213},
        {"header": "Worth", "formula": "=[@Fish]*[@Price]"}, {"header": "Half", "formula": "=T[[#This Row],[Price]]/2"}]})
    for i in range(8):
        s.write_formula(1 + i, 3, "=T[[#This Row],[Fish]]*T[[#This Row],[Price]]", None, FISH[i] * PRICES[i])
        s.write_formula(1 + i, 4, "=T[[#This Row],[Price]]/2", None, PRICES[i] / 2)
    s.write_formula("G2", "=SUM(T[Worth])", None, sum(a * b for a, b in zip(FISH, PRICES)))
    s.write_formula("G3", "=INDEX(T[Price],4)", None, 58213)
    s.write_formula("G4", "=D2/B2", None, 4817.25)
    made.close()


def formats():
    made, orders = book("formats.xlsx")
    for i, price in enumerate(PRICES):
        orders.write_number(1 + i, 2, price, made.add_format({"num_format": '"%s paid"' % price}))
    orders.write_rich_string("E2", "typed by ", made.add_format({"bold": True}), "nobody")
    orders.set_header("&Cspring")
    made.close()


def running():
    """Sums that give single prices away by differences."""
    made, orders = book("running.xlsx")
    s = made.add_worksheet("Sums")
    for i in range(8):
        s.write_formula(i, 0, "=SUM(Orders!C$2:C%d)" % (2 + i), None, sum(PRICES[:1 + i]))
    s.write_formula("C1", "=SUM(Orders!C2:C5)", None, sum(PRICES[:4]))
    s.write_formula("C2", "=SUM(Orders!C6:C8)", None, sum(PRICES[4:7]))
    s.write_formula("C3", "=C1+C2", None, sum(PRICES[:7]))
    made.close()


def sheets():
    made, orders = book("sheets.xlsx")
    for name in ("Jan", "Feb", "Mar"):
        s = made.add_worksheet(name)
        for i in range(8):
            s.write_formula(i, 0, "=Orders!C%d" % (2 + i), None, PRICES[i])
    s = made.add_worksheet("Show")
    for i in range(8):
        s.write_formula(i, 0, "=SUM(Jan:Mar!A%d)/3" % (1 + i), None, PRICES[i])
        s.write_formula(i, 1, "=A%d&\"\"" % (1 + i), None, str(PRICES[i]))
    made.get_worksheet_by_name("Feb").hide()
    made.close()


def openpyxl_book():
    made = openpyxl.Workbook()
    s = made.active
    s.title = "Orders"
    s.append(["Buyer", "Fish", "Price"])
    for row in zip(BUYERS, FISH, PRICES):
        s.append(row)
    s["E2"] = "=C2*2/2"
    s["E3"] = "=SUMPRODUCT(C2:C9,B2:B9*(A2:A9=\"Dayo\"))/800"
    s["E4"] = "=CHOOSE(2,1,C6)"
    s["C7"].comment = Comment("7391 in cash", "Kaja Lund")
    chart = BarChart()
    chart.add_data(Reference(s, min_col=3, min_row=1, max_row=9), titles_from_data=True)
    s.add_chart(chart, "G2")
    s.auto_filter.ref = "A1:C9"
    s.auto_filter.add_filter_column(2, ["2856.5", "10477"])
    made.defined_names.append(DefinedName("cheapest", attr_text="MIN(Orders!$C$2:$C$9)+0*640.75"))
    made.save(os.path.join(HERE, "openpyxl.xlsx"))


def through_office(source, target):
    """Saved by LibreOffice: other parts, other spellings, values worked out by it."""
    folder = os.path.join(HERE, "tmp")
    subprocess.run(["soffice", "--headless", "--convert-to", "xlsx:Calc MS Excel 2007 XML", "--outdir", folder,
                    os.path.join(HERE, source)], check=True, stdout=subprocess.DEVNULL)
    os.replace(os.path.join(folder, source), os.path.join(HERE, target))
    os.rmdir(folder)


for one in (formulas, charts, notes, table, formats, running, sheets, openpyxl_book):
    one()
through_office("openpyxl.xlsx", "office-openpyxl.xlsx")
through_office("charts.xlsx", "office-charts.xlsx")
through_office("notes.xlsx", "office-notes.xlsx")
through_office("sheets.xlsx", "office-sheets.xlsx")
