package org.frisket.export.svg;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.frisket.export.Handoff;
import org.frisket.export.OperationInk;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.PathData;
import org.frisket.geometry.Region;
import org.frisket.geometry.Transform;
import org.frisket.geometry.options.OptionValues;
import org.frisket.model.Layer;
import org.frisket.model.Operation;
import org.frisket.model.OperationKind;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.PreparedLayer;
import org.frisket.prepare.PreparedPicture;

/** One SVG document; user units are millimetres. */
final class SvgDocument {

	private static final String HATCH = "print-hatch";
	private static final String CLIP = "print-pieces";
	/** Anything else in a job's colour could be a reference to elsewhere. */
	private static final Pattern COLOUR = Pattern.compile("#[0-9a-fA-F]{6}");

	private final PreparedJob job;
	private final int decimals;
	private final boolean filled;
	private final double width;
	private final double height;
	private final Transform toPage;
	private final UniqueIds ids = new UniqueIds();
	private final StringBuilder text = new StringBuilder(1 << 16);

	SvgDocument(Handoff handoff, OptionValues options) {
		job = handoff.job();
		decimals = options.count(SvgExporter.DECIMALS);
		filled = options.text(SvgExporter.FILL).equals("layer");
		Bounds page = handoff.page(options.length(SvgExporter.MARGIN));
		width = roundedUp(page.width());
		height = roundedUp(page.height());
		toPage = Transform.translation(-page.minX(), -page.minY());
	}

	/** To a tenth of a millimetre, and never to nothing, which SVG does not draw. */
	private static double roundedUp(double length) {
		return Math.max(1, Math.ceil(length * 10 - 1e-9) / 10);
	}

	String text(Monitor monitor) {
		text.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
		text.append("<svg xmlns=\"http://www.w3.org/2000/svg\"")
				.append(hasPictures() ? " xmlns:xlink=\"http://www.w3.org/1999/xlink\"" : "")
				.append(" version=\"1.1\" width=\"").append(number(width))
				.append("mm\" height=\"").append(number(height)).append("mm\" viewBox=\"0 0 ").append(number(width))
				.append(' ').append(number(height)).append("\">\n");
		if (job.job().getTitle() != null) {
			text.append("\t<title>").append(escaped(job.job().getTitle())).append("</title>\n");
		}
		if (prints()) {
			ids.take(HATCH);
			hatch();
		}
		int done = 0;
		for (PreparedLayer layer : job.layers()) {
			monitor.check();
			monitor.worked((double) done++ / job.layers().size());
			if (layer.layer().isVisible()) {
				layer(layer);
			}
		}
		return text.append("</svg>\n").toString();
	}

	private boolean prints() {
		return job.elements().anyMatch(element -> element.has(OperationKind.PRINT) && element.picture().isEmpty());
	}

	private boolean hasPictures() {
		return job.elements().anyMatch(element -> element.has(OperationKind.PRINT) && element.picture().isPresent());
	}

	private void hatch() {
		OperationInk ink = OperationInk.of(OperationKind.PRINT);
		text.append("\t<defs>\n\t\t<pattern id=\"").append(HATCH)
				.append("\" width=\"2\" height=\"2\" patternUnits=\"userSpaceOnUse\">\n")
				.append("\t\t\t<path d=\"M0 2L2 0\" fill=\"none\" stroke=\"").append(ink.colour())
				.append("\" stroke-width=\"").append(number(ink.width())).append("\"/>\n\t\t</pattern>\n\t</defs>\n");
	}

	private void layer(PreparedLayer prepared) {
		Layer layer = prepared.layer();
		text.append("\t<g id=\"").append(escaped(ids.next(layer.getId()))).append('"');
		if (layer.getName() != null) {
			text.append(" data-layer=\"").append(escaped(layer.getName())).append('"');
		}
		if (layer.getStock() != null) {
			text.append(" data-stock=\"").append(escaped(layer.getStock())).append('"');
		}
		text.append(">\n");
		if (layer.getName() != null) {
			text.append("\t\t<title>").append(escaped(layer.getName())).append("</title>\n");
		}
		for (PreparedElement element : prepared.shown()) {
			Map<OperationKind, Operation> operations = new LinkedHashMap<>();
			element.operations().forEach(operation -> operations.putIfAbsent(operation.getKind(), operation));
			for (Operation operation : operations.values()) {
				element(element, operation, operations.size() > 1, fill(layer, operation.getKind()));
			}
		}
		text.append("\t</g>\n");
	}

	private String fill(Layer layer, OperationKind operation) {
		return switch (operation) {
		case PRINT -> "url(#" + HATCH + ")";
		case CUT, KISS_CUT -> filled && layer.getColour() != null && COLOUR.matcher(layer.getColour()).matches()
				? layer.getColour()
				: "none";
		case CREASE, PERFORATE, DRAW -> "none";
		};
	}

	private void element(PreparedElement element, Operation worked, boolean several, String fill) {
		OperationKind operation = worked.getKind();
		String id = element.element().getId() + (several ? "-" + OperationInk.word(operation) : "");
		if (operation == OperationKind.PRINT && element.picture().isPresent()) {
			Optional<Region> pieces = element.printedPieces();
			pieces.ifPresent(this::clip);
			picture(id, element.element().getName(), element.picture().get());
			pieces.ifPresent(each -> text.append("\t\t</g>\n"));
			return;
		}
		List<Contour> dashes = element.dashes(worked);
		if (!dashes.isEmpty()) {
			path(id, element.element().getName(), operation, "none", new Outline(dashes).transformed(toPage),
					List.of());
			return;
		}
		List<Double> pattern = OperationInk.of(operation).pattern();
		if (!element.region().isEmpty()) {
			path(id, element.element().getName(), operation, fill, element.region().transformed(toPage).toOutline(), pattern);
		}
		if (!element.lines().isEmpty()) {
			path(id + "-lines", element.element().getName(), operation, "none",
					new Outline(element.lines()).transformed(toPage), pattern);
		}
	}

	/** Begins a group of which only what lies in the region is shown. */
	private void clip(Region region) {
		String id = ids.next(CLIP);
		text.append("\t\t<clipPath id=\"").append(id).append("\"><path d=\"")
				.append(PathData.format(region.transformed(toPage).toOutline(), decimals))
				.append("\"/></clipPath>\n\t\t<g clip-path=\"url(#").append(id).append(")\">\n");
	}

	/** The unit square taken to its place: a map takes whatever size it needs from there. */
	private void picture(String id, String name, PreparedPicture picture) {
		Transform place = picture.place().then(toPage);
		text.append("\t\t<image id=\"").append(escaped(ids.next(id))).append("\" data-operation=\"")
				.append(OperationInk.word(OperationKind.PRINT)).append('"');
		if (name != null) {
			text.append(" data-name=\"").append(escaped(name)).append('"');
		}
		text.append(" width=\"1\" height=\"1\" preserveAspectRatio=\"none\" transform=\"matrix(")
				.append(Stream.of(place.a(), place.b(), place.c(), place.d(), place.e(), place.f()).map(this::number)
						.collect(Collectors.joining(" ")))
				.append(")\" xlink:href=\"").append(PictureLink.of(picture)).append("\"/>\n");
	}

	/** @param pattern that the stroke is drawn with, which is only a look; empty for none */
	private void path(String id, String name, OperationKind operation, String fill, Outline outline,
			List<Double> pattern) {
		OperationInk ink = OperationInk.of(operation);
		text.append("\t\t<path id=\"").append(escaped(ids.next(id))).append("\" data-operation=\"")
				.append(OperationInk.word(operation)).append('"');
		if (name != null) {
			text.append(" data-name=\"").append(escaped(name)).append('"');
		}
		text.append(" fill=\"").append(escaped(fill)).append("\" stroke=\"").append(ink.colour())
				.append("\" stroke-width=\"").append(number(ink.width())).append('"');
		if (!pattern.isEmpty()) {
			text.append(" stroke-dasharray=\"").append(dashes(pattern)).append('"');
		}
		text.append(" d=\"").append(PathData.format(outline, decimals)).append("\"/>\n");
	}

	private String dashes(List<Double> pattern) {
		return pattern.stream().map(this::number).collect(Collectors.joining(" "));
	}

	private String number(double value) {
		BigDecimal rounded = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN).stripTrailingZeros();
		return rounded.signum() == 0 ? "0" : rounded.toPlainString();
	}

	/** For attribute values and text; what XML 1.0 cannot hold becomes a space. */
	private static String escaped(String raw) {
		StringBuilder safe = new StringBuilder(raw.length());
		raw.codePoints().forEach(c -> {
			switch (c) {
			case '&' -> safe.append("&amp;");
			case '<' -> safe.append("&lt;");
			case '>' -> safe.append("&gt;");
			case '"' -> safe.append("&quot;");
			case '\n', '\r', '\t' -> safe.append(' ');
			default -> {
				boolean allowed = c >= 0x20 && c < 0xD800 || c > 0xDFFF && c < 0xFFFE || c > 0xFFFF;
				safe.appendCodePoint(allowed ? c : ' ');
			}
			}
		});
		return safe.toString();
	}
}
