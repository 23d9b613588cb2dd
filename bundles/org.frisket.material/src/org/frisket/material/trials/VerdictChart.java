package org.frisket.material.trials;

import java.util.Locale;
import java.util.Optional;

import org.frisket.material.tools.Machine;

/**
 * The verdicts of a test sheet as an SVG picture, in mm. Verdicts are told apart by their marks and by words; colour only
 * helps.
 */
public final class VerdictChart {

	private static final double CELL = 12;
	private static final double LEFT = 22;
	private static final double TOP = 22;
	private static final double LEGEND = 6;

	private final TestSheet sheet;
	private final Machine machine;
	private final StringBuilder svg = new StringBuilder();

	private VerdictChart(TestSheet sheet, Machine machine) {
		this.sheet = sheet;
		this.machine = machine;
	}

	/** The picture; the same sheet always gives the same text. */
	public static String svg(TestSheet sheet, Machine machine) {
		return new VerdictChart(sheet, machine).draw();
	}

	private String draw() {
		int columns = sheet.across().values().size();
		int rows = sheet.down().values().size();
		double width = Math.max(90, LEFT + columns * CELL + 8);
		double height = TOP + rows * CELL + (Verdict.values().length + 2) * LEGEND + 4;
		svg.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"")
				.append(number(width)).append("mm\" height=\"").append(number(height)).append("mm\" viewBox=\"0 0 ")
				.append(number(width)).append(' ').append(number(height))
				.append("\" font-family=\"sans-serif\" font-size=\"3.4\" fill=\"#222222\">\n");
		svg.append("\t<rect width=\"100%\" height=\"100%\" fill=\"#ffffff\"/>\n");
		text(4, 6, "start", sheet.id() + " · " + sheet.day() + " · " + stock());
		text(4, 11, "start", axis(sheet.across()) + " → · " + axis(sheet.down()) + " ↓");
		for (int column = 0; column < columns; column++) {
			text(LEFT + (column + 0.5) * CELL, TOP - 2, "middle",
					(char) ('A' + column) + " " + Sweep.plain(sheet.across().values().get(column)));
		}
		for (int row = 0; row < rows; row++) {
			text(LEFT - 2, TOP + (row + 0.6) * CELL, "end",
					row + 1 + "  " + Sweep.plain(sheet.down().values().get(row)));
		}
		Optional<GoodWindow> window = sheet.window();
		for (CellPlace place : sheet.places()) {
			double x = LEFT + place.column() * CELL;
			double y = TOP + place.row() * CELL;
			boolean inWindow = window.filter(found -> found.cells().contains(place)).isPresent();
			frame(x, y, CELL, inWindow);
			mark(sheet.verdict(place), x + CELL / 2, y + CELL / 2, 3);
			if (window.filter(found -> found.centre().equals(place)).isPresent()) {
				advised(x + 1, y + 1, CELL - 2);
			}
		}
		legend(TOP + rows * CELL + LEGEND);
		return svg.append("</svg>\n").toString();
	}

	private String stock() {
		StockFacts stock = sheet.stock();
		return (stock.stock().isEmpty() ? stock.family().name().toLowerCase(Locale.ROOT) : stock.stock())
				+ (stock.grammage() > 0 ? " " + Sweep.plain(stock.grammage()) + " g/m²" : "")
				+ (stock.caliperMm() > 0 ? " " + Sweep.plain(stock.caliperMm()) + " mm" : "");
	}

	private String axis(Sweep sweep) {
		String unit = switch (sweep.parameter()) {
		case EXPOSURE -> "mm";
		case PRESSURE -> machine.pressure().unit();
		case SPEED -> machine.speed().unit();
		case PASSES -> "";
		};
		return sweep.parameter().word() + (unit.isEmpty() ? "" : " (" + unit + ")");
	}

	private void frame(double x, double y, double size, boolean inWindow) {
		svg.append("\t<rect x=\"").append(number(x)).append("\" y=\"").append(number(y)).append("\" width=\"")
				.append(number(size)).append("\" height=\"").append(number(size)).append("\" fill=\"")
				.append(inWindow ? "#dceeea" : "none").append("\" stroke=\"#888888\" stroke-width=\"0.2\"/>\n");
	}

	private void advised(double x, double y, double size) {
		svg.append("\t<rect class=\"advised\" x=\"").append(number(x)).append("\" y=\"").append(number(y))
				.append("\" width=\"").append(number(size)).append("\" height=\"").append(number(size))
				.append("\" fill=\"none\" stroke=\"#0f6b66\" stroke-width=\"0.9\"/>\n");
	}

	/** Disc: through. Bar: not through. Zigzag: torn. Cross: carrier cut. Corner: corners lifted. Dot: not judged. */
	private void mark(Optional<Verdict> verdict, double x, double y, double size) {
		if (verdict.isEmpty()) {
			svg.append("\t<circle cx=\"").append(number(x)).append("\" cy=\"").append(number(y))
					.append("\" r=\"0.4\" fill=\"#888888\"/>\n");
			return;
		}
		if (verdict.get() == Verdict.THROUGH) {
			svg.append("\t<circle cx=\"").append(number(x)).append("\" cy=\"").append(number(y)).append("\" r=\"")
					.append(number(size)).append("\" fill=\"#0f6b66\"/>\n");
			return;
		}
		double[] points = switch (verdict.get()) {
		case NOT_THROUGH -> new double[] { -1, 0, 1, 0 };
		case TORN -> new double[] { -1, 0.6, -0.4, -0.6, 0.2, 0.6, 0.8, -0.6 };
		case CORNERS_LIFTED -> new double[] { -1, 1, -1, -1, 1, -1 };
		default -> new double[] { -1, -1, 1, 1, 0, 0, -1, 1, 1, -1 };
		};
		svg.append("\t<polyline fill=\"none\" stroke=\"#8a3b12\" stroke-width=\"0.8\" points=\"");
		for (int i = 0; i < points.length; i += 2) {
			svg.append(i == 0 ? "" : " ").append(number(x + points[i] * size * 0.8)).append(',')
					.append(number(y + points[i + 1] * size * 0.8));
		}
		svg.append("\"/>\n");
	}

	private void legend(double top) {
		double y = top;
		for (Verdict verdict : Verdict.values()) {
			mark(Optional.of(verdict), 7, y - 1.2, 1.6);
			text(12, y, "start", verdict.text());
			y += LEGEND;
		}
		mark(Optional.empty(), 7, y - 1.2, 1.6);
		text(12, y, "start", Messages.VerdictChart_untried);
		advised(50, top - 3.4, 4);
		text(57, top, "start", Messages.VerdictChart_advised);
	}

	private void text(double x, double y, String anchor, String words) {
		svg.append("\t<text x=\"").append(number(x)).append("\" y=\"").append(number(y)).append("\" text-anchor=\"")
				.append(anchor).append("\">");
		words.codePoints().forEach(c -> {
			switch (c) {
			case '&' -> svg.append("&amp;");
			case '<' -> svg.append("&lt;");
			case '>' -> svg.append("&gt;");
			default -> svg.appendCodePoint(c < 0x20 || c >= 0xD800 && c <= 0xDFFF || c == 0xFFFE || c == 0xFFFF ? ' ' : c);
			}
		});
		svg.append("</text>\n");
	}

	private static String number(double value) {
		return Sweep.plain(Math.rint(value * 1000) / 1000);
	}
}
