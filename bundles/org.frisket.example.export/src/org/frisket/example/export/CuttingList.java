package org.frisket.example.export;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.model.Operation;
import org.frisket.model.OperationKind;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.PreparedLayer;

/** What is done to the parts of a sheet or a job. */
record CuttingList(List<Row> rows) {

	/**
	 * One thing that is done to one part.
	 *
	 * @param stock   id of it; empty if none is chosen
	 * @param width   of the part in mm
	 * @param height  of the part in mm
	 * @param tool    id of it; empty if the operation leaves it to the studio
	 * @param strokes how often the tool is set down
	 * @param metres  that the tool works, all passes counted
	 */
	record Row(String part, String stock, double width, double height, String operation, String tool, long strokes,
			double metres) {
	}

	/** @throws java.util.concurrent.CancellationException if the monitor cancels */
	static CuttingList of(PreparedJob job, Monitor monitor) {
		List<Row> rows = new ArrayList<>();
		for (PreparedLayer layer : job.layers()) {
			String stock = Objects.requireNonNullElse(layer.layer().getStock(), "");
			for (PreparedElement element : layer.shown()) {
				// whoever has called the export off does not wait for the rest of it
				monitor.check();
				for (Operation operation : element.operations()) {
					if (operation.getKind() != OperationKind.PRINT) {
						rows.add(row(element, operation, stock));
					}
				}
			}
		}
		return new CuttingList(rows);
	}

	private static Row row(PreparedElement element, Operation operation, String stock) {
		// a crease or a perforation may be worked as dashes; all else is worked along the outlines and lines
		List<Contour> dashes = element.dashes(operation);
		List<Contour> lines = !dashes.isEmpty() ? dashes
				: Stream.concat(element.region().contours().stream(), element.lines().stream()).toList();
		double mm = lines.stream().mapToDouble(Contour::length).sum();
		Bounds bounds = element.bounds();
		return new Row(Objects.requireNonNullElse(element.element().getName(), element.element().getId()), stock,
				bounds.width(), bounds.height(), operation.getKind().getLiteral(),
				Objects.requireNonNullElse(operation.getTool(), ""), (long) lines.size() * operation.getPasses(),
				mm * operation.getPasses() / 1000);
	}

	/** @param mm how many of them the unit of widths and heights has */
	String text(String separator, String unit, double mm) {
		StringBuilder text = new StringBuilder();
		line(text, separator, "part", "stock", "width " + unit, "height " + unit, "operation", "tool", "strokes", "metres");
		for (Row row : rows) {
			line(text, separator, row.part(), row.stock(), number(row.width() / mm), number(row.height() / mm),
					row.operation(), row.tool(), Long.toString(row.strokes()), number(row.metres()));
		}
		return text.toString();
	}

	/** Lines end as RFC 4180, 2 (1) has it. */
	private static void line(StringBuilder text, String separator, String... values) {
		text.append(String.join(separator, Stream.of(values).map(CuttingList::quoted).toList())).append("\r\n");
	}

	/** In quotes where a value has a separator, a quote or an end of line in it: RFC 4180, 2 (6) and 2 (7). */
	private static String quoted(String value) {
		return value.matches("[^,;\"\\r\\n]*") ? value : '"' + value.replace("\"", "\"\"") + '"';
	}

	/** The same in every country, so that the same sheet gives the same file. */
	private static String number(double value) {
		return String.format(Locale.ROOT, "%.3f", value);
	}
}
