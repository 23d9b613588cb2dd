package org.frisket.export.dxf;

import java.io.IOException;
import java.io.Writer;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.osgi.util.NLS;
import org.frisket.export.Handoff;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Transform;
import org.frisket.geometry.options.OptionValues;
import org.frisket.model.Element;
import org.frisket.model.Operation;
import org.frisket.model.OperationKind;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedLayer;

/** One drawing: header, tables, entities. The lower left corner of the page is its zero; y grows upwards. */
final class Drawing {

	/** Further from zero nothing is drawn on; in mm. */
	private static final double LARGEST = 1e7;

	private final Handoff handoff;
	private final Monitor monitor;
	private final double perMm;
	private final String unit;
	private final Bounds page;
	private final Groups out;
	private final Entities entities;
	private final LayerNames names = new LayerNames();

	Drawing(Handoff handoff, OptionValues options, Monitor monitor, Writer writer) {
		this.handoff = handoff;
		this.monitor = monitor;
		boolean inch = options.text(DxfExporter.UNIT).equals("in");
		unit = inch ? "inch" : "mm";
		perMm = inch ? 1 / 25.4 : 1;
		page = handoff.page(options.length(DxfExporter.MARGIN));
		// an inch is longer: two decimals more keep what is written as fine
		out = new Groups(writer, options.count(DxfExporter.DECIMALS) + (inch ? 2 : 0));
		entities = new Entities(out, options.length(DxfExporter.TOLERANCE),
				Transform.translation(-page.minX(), -page.maxY()).then(Transform.scaling(perMm, -perMm)));
	}

	void write() throws IOException {
		Bounds drawn = Bounds.EMPTY;
		for (PreparedLayer layer : handoff.job().layers()) {
			for (PreparedElement element : layer.shown()) {
				requirePlace(element);
				for (OperationKind kind : operations(element).keySet()) {
					names.of(new LayerNames.Work(kind, layer.layer()));
					drawn = drawn.with(element.bounds());
				}
			}
		}
		header(drawn.isEmpty() ? page : drawn);
		tables();
		out.put(0, "SECTION").put(2, "ENTITIES");
		int done = 0;
		for (PreparedLayer layer : handoff.job().layers()) {
			for (PreparedElement element : layer.shown()) {
				monitor.check();
				element(layer, element);
			}
			monitor.worked((double) ++done / handoff.job().layers().size());
		}
		out.put(0, "ENDSEC").put(0, "EOF");
	}

	private static Map<OperationKind, Operation> operations(PreparedElement element) {
		Map<OperationKind, Operation> operations = new LinkedHashMap<>();
		element.operations().forEach(operation -> operations.putIfAbsent(operation.getKind(), operation));
		return operations;
	}

	/** R12 has no word for the unit of lengths, only for whether they are shown as feet and inches. */
	private void header(Bounds drawn) throws IOException {
		out.put(999, "Frisket; lengths in " + unit + "; layers are named by operation and stock layer");
		out.put(0, "SECTION").put(2, "HEADER");
		out.put(9, "$ACADVER").put(1, "AC1009");
		out.put(9, "$INSBASE").place(10, 0, 0).put(30, 0.0);
		out.put(9, "$EXTMIN").place(10, x(drawn.minX()), y(drawn.maxY())).put(30, 0.0);
		out.put(9, "$EXTMAX").place(10, x(drawn.maxX()), y(drawn.minY())).put(30, 0.0);
		out.put(9, "$LIMMIN").place(10, 0, 0);
		out.put(9, "$LIMMAX").place(10, x(page.maxX()), y(page.minY()));
		// dashes are as long as the table of line types says
		out.put(9, "$LTSCALE").put(40, "1.0");
		out.put(9, "$LUNITS").put(70, 2);
		out.put(0, "ENDSEC");
	}

	private double x(double x) {
		return (x - page.minX()) * perMm;
	}

	private double y(double y) {
		return (page.maxY() - y) * perMm;
	}

	private void tables() throws IOException {
		out.put(0, "SECTION").put(2, "TABLES");
		out.put(0, "TABLE").put(2, "LTYPE").put(70, LineType.values().length);
		for (LineType type : LineType.values()) {
			lineType(type);
		}
		out.put(0, "ENDTAB");
		out.put(0, "TABLE").put(2, "LAYER").put(70, names.all().size() + 1);
		layer("0", 7, LineType.CONTINUOUS);
		for (var named : names.all().entrySet()) {
			OperationKind kind = named.getKey().operation();
			layer(named.getValue(), colour(kind), LineType.of(kind));
		}
		out.put(0, "ENDTAB");
		out.put(0, "TABLE").put(2, "STYLE").put(70, 1);
		out.put(0, "STYLE").put(2, "STANDARD").put(70, 0).put(40, "0.0").put(41, "1.0").put(50, "0.0").put(71, 0)
				.put(42, "1.0").put(3, "txt").put(4, "");
		out.put(0, "ENDTAB");
		out.put(0, "ENDSEC");
	}

	/** Gaps are negative. */
	private void lineType(LineType type) throws IOException {
		List<Double> pattern = type.pattern();
		double length = pattern.stream().mapToDouble(Double::doubleValue).sum();
		out.put(0, "LTYPE").put(2, type.name()).put(70, 64).put(3, type.look()).put(72, 65).put(73, pattern.size())
				.put(40, length * perMm);
		for (int i = 0; i < pattern.size(); i++) {
			out.put(49, pattern.get(i) * perMm * (i % 2 == 0 ? 1 : -1));
		}
	}

	private void layer(String name, int colour, LineType type) throws IOException {
		out.put(0, "LAYER").put(2, name).put(70, 64).put(62, colour).put(6, type.name());
	}

	/** The number of DXF's colours that is nearest to the ink's, by distance in red, green and blue. */
	private static int colour(OperationKind kind) {
		return switch (kind) {
		case CUT -> 139;
		case KISS_CUT -> 183;
		case CREASE -> 44;
		case PERFORATE -> 222;
		case DRAW -> 87;
		case PRINT -> 252;
		};
	}

	private void element(PreparedLayer layer, PreparedElement element) throws IOException {
		for (var worked : operations(element).entrySet()) {
			String name = names.of(new LayerNames.Work(worked.getKey(), layer.layer()));
			List<Contour> dashes = element.dashes(worked.getValue());
			if (dashes.isEmpty()) {
				contours(name, null, element.region().contours());
				contours(name, null, element.lines());
			} else {
				// these are the dashes: they are not broken up again
				contours(name, LineType.CONTINUOUS, dashes);
			}
		}
	}

	/** @param own line type, where it is not that of the layer; else null */
	private void contours(String layer, LineType own, List<Contour> contours) throws IOException {
		for (Contour contour : contours) {
			entities.add(layer, own, contour);
		}
	}

	private static void requirePlace(PreparedElement prepared) throws IOException {
		Bounds bounds = prepared.bounds();
		double farthest = Math.abs(bounds.minX()) + Math.abs(bounds.minY()) + bounds.width() + bounds.height();
		if (!bounds.isEmpty() && !(farthest <= LARGEST)) {
			throw new IOException(NLS.bind(Messages.Drawing_tooFar, name(prepared.element())));
		}
	}

	private static String name(Element element) {
		return element.getName() == null || element.getName().isBlank() ? element.getId() : element.getName();
	}
}
