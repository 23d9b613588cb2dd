package org.frisket.imports.svg;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.geometry.clean.FillRule;
import org.frisket.imports.ImportedShape;
import org.frisket.imports.ImportedShape.Area;
import org.frisket.imports.ImportedShape.Lines;
import org.frisket.imports.Remarks;
import org.frisket.imports.UnreadableArtException;
import org.frisket.typography.source.FontLibrary;

/** Goes through the tree and gathers what it shows, in mm. */
final class Walk {

	/** How far cubics may lie from arcs, in mm. */
	private static final double DEVIATION = 0.001;

	private final boolean strokesAsOutlines;
	private final Remarks remarks;
	private final Budget budget;
	private final Addresses addresses;
	private final Cascade cascade;
	private final ShapeOutlines shapes;
	private final TextOutlines texts;
	private final PictureReader pictures;
	private final Clipping clipping;
	private final Masking masking;

	Walk(String file, Node root, boolean strokesAsOutlines, FontLibrary fonts, Remarks remarks, Monitor monitor) {
		this.strokesAsOutlines = strokesAsOutlines;
		this.remarks = remarks;
		budget = new Budget(file, monitor);
		addresses = new Addresses(root, remarks);
		cascade = new Cascade(root, remarks);
		shapes = new ShapeOutlines(remarks);
		TextTracks tracks = new TextTracks(addresses, shapes, budget);
		texts = new TextOutlines(cascade, new Fonts(fonts, remarks), tracks, remarks, monitor);
		pictures = new PictureReader(remarks, addresses, shapes);
		clipping = new Clipping(monitor, remarks);
		masking = new Masking(this, cascade, addresses, clipping);
	}

	/** Groups that stand by themselves are layers; what stands beside them is one more. */
	Map<String, List<ImportedShape>> layers(Node root, Scope outer) throws UnreadableArtException {
		Map<String, List<ImportedShape>> layers = new LinkedHashMap<>();
		Scope scope = scope(root, outer);
		if (!scope.style().isShown()) {
			return layers;
		}
		Node holder = root;
		for (Node only = onlyGroup(holder, scope); only != null; only = onlyGroup(holder, scope)) {
			scope = scope(only, scope);
			holder = only;
		}
		int number = 0;
		for (Node child : holder.children()) {
			List<ImportedShape> found = new ArrayList<>();
			draw(child, scope, found);
			boolean group = child.is("g");
			number += group ? 1 : 0;
			if (!found.isEmpty()) {
				layers.computeIfAbsent(group ? layer(child, number) : Messages.Walk_shapes, name -> new ArrayList<>())
						.addAll(found);
			}
		}
		return layers;
	}

	private static String layer(Node group, int number) {
		String label = group.label();
		return label.isEmpty() ? NLS.bind(Messages.Walk_layer, number) : label;
	}

	/** The group that holds all there is to see and only groups; null if there is none, or it does more than hold. */
	private Node onlyGroup(Node holder, Scope scope) {
		Node only = null;
		for (Node child : holder.children()) {
			if (!isDescriptive(child)) {
				if (only != null || !child.is("g")) {
					return null;
				}
				only = child;
			}
		}
		if (only == null || only.children().stream().noneMatch(child -> child.is("g"))) {
			return null;
		}
		Style style = cascade.of(only, scope.style());
		boolean plain = style.isShown() && style.get("clip-path", "none").equals("none")
				&& style.get("mask", "none").equals("none");
		return plain ? only : null;
	}

	private static boolean isDescriptive(Node node) {
		return switch (node.name()) {
		case "", "defs", "style", "title", "desc", "metadata", "symbol", "clipPath", "mask", "marker", "pattern",
				"linearGradient", "radialGradient", "filter", "view", "cursor" ->
			true;
		default -> false;
		};
	}

	Scope scope(Node node, Scope outer) {
		Style style = cascade.of(node, outer.style());
		String transform = style.get("transform", node.attribute("transform", ""));
		Lengths lengths = outer.lengths().withFontSize(TextOutlines.size(style, outer.lengths()));
		return new Scope(Transforms.parse(transform).then(outer.toMm()), style, lengths, outer.bare());
	}

	void draw(Node node, Scope outer, List<ImportedShape> out) throws UnreadableArtException {
		if (isDescriptive(node) || !Conditions.hold(node)) {
			return;
		}
		budget.element(node);
		Scope scope = scope(node, outer);
		if (!scope.style().isShown() || scope.pixel() == 0) {
			return;
		}
		List<ImportedShape> found = new ArrayList<>();
		content(node, scope, found);
		out.addAll(masking.masked(node, scope, found));
	}

	private void content(Node node, Scope scope, List<ImportedShape> out) throws UnreadableArtException {
		switch (node.name()) {
		case "g", "a" -> children(node, scope, out);
		case "switch" -> {
			for (Node child : node.children()) {
				if (!isDescriptive(child) && !child.is("foreignObject") && Conditions.hold(child)) {
					draw(child, scope, out);
					return;
				}
			}
		}
		case "svg" -> nested(node, scope, out, null, null);
		case "use" -> use(node, scope, out);
		case "image" -> {
			if (scope.style().isVisible()) {
				pictures.read(node, scope.lengths(), scope.toMm(), out);
			}
		}
		case "text" -> shape(node, scope, texts.of(node, scope), FillRule.NON_ZERO, out);
		default -> {
			budget.pathData(node, node.attribute("d"));
			Outline outline = shapes.of(node, scope.lengths(), DEVIATION / scope.pixel());
			if (outline == null) {
				remarks.count(node.name(), node.place(), count -> NLS.bind(Messages.Walk_leftOut, count, node.name()));
			} else if (scope.style().isVisible()) {
				shape(node, scope, outline, fillRule(scope.style(), "fill-rule"), out);
			}
		}
		}
	}

	private void children(Node node, Scope scope, List<ImportedShape> out) throws UnreadableArtException {
		for (Node child : node.children()) {
			draw(child, scope, out);
		}
	}

	static FillRule fillRule(Style style, String property) {
		return style.get(property, "nonzero").equals("evenodd") ? FillRule.EVEN_ODD : FillRule.NON_ZERO;
	}

	/** What is filled is an area; what is only drawn along is lines, or the area that the pen covers. */
	private void shape(Node node, Scope scope, Outline outline, FillRule rule, List<ImportedShape> out)
			throws UnreadableArtException {
		Style style = scope.style();
		String name = node.label();
		boolean filled = (scope.bare() || style.paints("fill", "black")) && !node.is("line") && bounds(outline);
		double width = scope.lengths().parse(style.get("stroke-width", "1"), Lengths.Of.DIAGONAL);
		boolean drawnAlong = !scope.bare() && style.paints("stroke", "none") && width > 0;
		if (filled) {
			Outline filling = budget.outline(node, outline).transformed(scope.toMm());
			out.add(new Area(name, filling, rule, Paint.colour(style.get("fill", "black"), style),
					quantity(node)));
		}
		if (drawnAlong) {
			String colour = Paint.colour(style.get("stroke", "none"), style);
			if (strokesAsOutlines) {
				Outline covered = covered(node, scope, outline, width);
				if (!covered.isEmpty()) {
					out.add(new Area(name, covered.transformed(scope.toMm()), FillRule.NON_ZERO, colour,
							quantity(node)));
				}
			} else if (!filled && !outline.isEmpty()) {
				Outline line = budget.outline(node, outline).transformed(scope.toMm());
				out.add(new Lines(name, line, width * scope.pixel(), colour, quantity(node)));
			}
		}
	}

	/** How many are wanted, as our own files say it; one where that is no such number. */
	private int quantity(Node node) {
		String text = node.attribute("data-quantity", "").strip();
		if (text.isEmpty()) {
			return 1;
		}
		if (text.matches("0*[1-9]\\d{0,5}")) {
			return Integer.parseInt(text);
		}
		remarks.once(node.place(), NLS.bind(Messages.Walk_quantity, text));
		return 1;
	}

	private Outline covered(Node node, Scope scope, Outline outline, double width) throws UnreadableArtException {
		Outline covered = outline.isEmpty() ? outline
				: budget.outline(node, StrokeOutline.of(outline, width, node, scope, remarks));
		if (!StrokeOutline.hasCaps(scope.style())) {
			return covered;
		}
		List<Point> dots = shapes.dots(node, scope.lengths());
		budget.nodes(node, 4L * dots.size());
		return dots.isEmpty() ? covered
				: covered.plus(StrokeOutline.ofDots(dots, width, scope.style(), DEVIATION / scope.pixel()));
	}

	/** Whether it goes round anything. */
	private static boolean bounds(Outline outline) {
		for (Contour contour : outline.contours()) {
			if (bounds(contour)) {
				return true;
			}
		}
		return false;
	}

	private static boolean bounds(Contour contour) {
		return contour.segments().size() > 1 || contour.signedArea() != 0;
	}

	private void use(Node node, Scope scope, List<ImportedShape> out) throws UnreadableArtException {
		Node target = addresses.target(node, node.attribute("href", ""));
		if (target == null) {
			return;
		}
		if (!addresses.enter(target)) {
			remarks.once(node.place(), NLS.bind(Messages.Walk_cycle, node.attribute("href")));
			return;
		}
		Transform shift = Transform.translation(shapes.length(node, "x", scope.lengths(), Lengths.Of.WIDTH),
				shapes.length(node, "y", scope.lengths(), Lengths.Of.HEIGHT));
		Scope inner = scope.in(shift.then(scope.toMm()), scope.lengths());
		if (target.is("symbol") || target.is("svg")) {
			Scope own = scope(target, inner);
			if (own.style().isShown()) {
				nested(target, own, out, node.attribute("width"), node.attribute("height"));
			}
		} else {
			draw(target, inner, out);
		}
		addresses.leave(target);
	}

	/** A picture within the picture, with a frame of its own. The sizes are those a use gives, or null. */
	private void nested(Node node, Scope scope, List<ImportedShape> out, String useWidth, String useHeight)
			throws UnreadableArtException {
		Lengths outer = scope.lengths();
		double width = size(useWidth, node.attribute("width"), outer, Lengths.Of.WIDTH);
		double height = size(useHeight, node.attribute("height"), outer, Lengths.Of.HEIGHT);
		if (!(width > 0) || !(height > 0)) {
			return;
		}
		Transform place = node.is("symbol") ? Transform.IDENTITY
				: Transform.translation(shapes.length(node, "x", outer, Lengths.Of.WIDTH),
						shapes.length(node, "y", outer, Lengths.Of.HEIGHT));
		Transform frame = place.then(scope.toMm());
		ViewBox box = ViewBox.of(node);
		Transform fit = box == null ? Transform.IDENTITY
				: box.into(width, height, node.attribute("preserveAspectRatio", "xMidYMid meet"));
		Lengths inner = new Lengths(outer.perInch(), box == null ? width : box.width(), box == null ? height : box.height(),
				outer.fontSize());
		List<ImportedShape> found = new ArrayList<>();
		children(node, scope.in(fit.then(frame), inner), found);
		String overflow = scope.style().get("overflow", "hidden");
		if (overflow.equals("visible") || overflow.equals("auto") || found.isEmpty()) {
			out.addAll(found);
		} else {
			Outline edge = Outline.of(Contour.polygon(
					List.of(Point.ORIGIN, new Point(width, 0), new Point(width, height), new Point(0, height))));
			out.addAll(clipping.clipped(found, clipping.region(edge.transformed(frame), FillRule.NON_ZERO), node));
		}
	}

	private static double size(String first, String second, Lengths lengths, Lengths.Of of) {
		String text = first != null ? first : second;
		return text == null || text.equals("auto") ? lengths.parse("100%", of) : lengths.parse(text, of);
	}
}
