package org.frisket.imports.svg;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Transform;
import org.frisket.geometry.clean.FillRule;
import org.frisket.imports.ImportedShape;
import org.frisket.imports.ImportedShape.Area;
import org.frisket.imports.ImportedShape.Lines;
import org.frisket.imports.Remarks;
import org.frisket.imports.UnreadableArtException;
import org.frisket.typography.FontLibrary;

/** Goes through the tree and gathers what it shows, in mm. */
final class Walk {

	/** How far cubics may lie from arcs, in mm. */
	private static final double DEVIATION = 0.001;
	/** Elements that use each other again and again may grow beyond all measure. */
	private static final int MOST_DRAWN = 500_000;
	/** Characters, used ones counted again; the memory that curves take is up to thirty times that. */
	private static final long MOST_PATH_DATA = 16L << 20;

	/** Where an element stands: its style and frame. */
	record Scope(Transform toMm, Style style, Lengths lengths) {

		/** Length of a pixel in mm; 0 where the frame is flattened. */
		double pixel() {
			return Math.sqrt(Math.abs(toMm.determinant()));
		}
	}

	private final String file;
	private final boolean strokesAsOutlines;
	private final Monitor monitor;
	private final Remarks remarks;
	private final Cascade cascade;
	private final ShapeOutlines shapes;
	private final TextOutlines texts;
	private final PictureReader pictures;
	private final Clipping clipping;
	private final Map<String, Node> ids = new HashMap<>();
	private final Set<Node> open = new HashSet<>();
	private int drawn;
	private long pathData;

	Walk(String file, Node root, boolean strokesAsOutlines, FontLibrary fonts, Remarks remarks, Monitor monitor) {
		this.file = file;
		this.strokesAsOutlines = strokesAsOutlines;
		this.monitor = monitor;
		this.remarks = remarks;
		cascade = new Cascade(root, remarks);
		shapes = new ShapeOutlines(remarks);
		texts = new TextOutlines(cascade, new Fonts(fonts, remarks), remarks, monitor);
		pictures = new PictureReader(remarks, shapes);
		clipping = new Clipping(monitor, remarks);
		collect(root);
	}

	private void collect(Node node) {
		String id = node.attribute("id");
		if (id != null) {
			ids.putIfAbsent(id, node);
		}
		node.children().forEach(this::collect);
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
				String label = child.label().isEmpty() ? NLS.bind(Messages.Walk_layer, number) : child.label();
				layers.computeIfAbsent(group ? label : Messages.Walk_shapes, name -> new ArrayList<>()).addAll(found);
			}
		}
		return layers;
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
		return new Scope(Transforms.parse(transform).then(outer.toMm()), style, lengths);
	}

	private void draw(Node node, Scope outer, List<ImportedShape> out) throws UnreadableArtException {
		if (isDescriptive(node) || !Conditions.hold(node)) {
			return;
		}
		monitor.check();
		if (++drawn > MOST_DRAWN) {
			throw new UnreadableArtException(file, node.place(), NLS.bind(Messages.Walk_many, MOST_DRAWN));
		}
		Scope scope = scope(node, outer);
		if (!scope.style().isShown() || scope.pixel() == 0) {
			return;
		}
		List<ImportedShape> found = new ArrayList<>();
		content(node, scope, found);
		out.addAll(masked(node, scope, found));
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
		case "text" -> shape(node, scope, texts.of(node, scope.style(), scope.lengths()), FillRule.NON_ZERO, out);
		default -> {
			String data = node.attribute("d");
			pathData += data == null ? 0 : data.length();
			if (pathData > MOST_PATH_DATA) {
				throw new UnreadableArtException(file, node.place(), NLS.bind(Messages.Walk_pathData, MOST_PATH_DATA >> 20));
			}
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

	private static FillRule fillRule(Style style, String property) {
		return style.get(property, "nonzero").equals("evenodd") ? FillRule.EVEN_ODD : FillRule.NON_ZERO;
	}

	/** What is filled is an area; what is only drawn along is lines, or the area that the pen covers. */
	private void shape(Node node, Scope scope, Outline outline, FillRule rule, List<ImportedShape> out) {
		Style style = scope.style();
		if (outline.isEmpty()) {
			return;
		}
		String name = node.label();
		boolean filled = style.paints("fill", "black") && !node.is("line") && bounds(outline);
		double width = scope.lengths().parse(style.get("stroke-width", "1"), Lengths.Of.DIAGONAL);
		boolean drawnAlong = style.paints("stroke", "none") && width > 0;
		if (filled) {
			out.add(new Area(name, outline.transformed(scope.toMm()), rule, Paint.colour(style.get("fill", "black"), style)));
		}
		if (drawnAlong) {
			String colour = Paint.colour(style.get("stroke", "none"), style);
			if (strokesAsOutlines) {
				Outline covered = StrokeOutline.of(outline, width, style, scope.lengths(), scope.pixel());
				out.add(new Area(name, covered.transformed(scope.toMm()), FillRule.NON_ZERO, colour));
			} else if (!filled) {
				out.add(new Lines(name, outline.transformed(scope.toMm()), width * scope.pixel(), colour));
			}
		}
	}

	/** Whether it goes round anything. */
	private static boolean bounds(Outline outline) {
		return outline.contours().stream().anyMatch(Walk::bounds);
	}

	private static boolean bounds(Contour contour) {
		return contour.segments().size() > 1 || contour.signedArea() != 0;
	}

	private void use(Node node, Scope scope, List<ImportedShape> out) throws UnreadableArtException {
		Node target = target(node, node.attribute("href", ""));
		if (target == null) {
			return;
		}
		if (!open.add(target)) {
			remarks.once(node.place(), NLS.bind(Messages.Walk_cycle, node.attribute("href")));
			return;
		}
		Transform shift = Transform.translation(shapes.length(node, "x", scope.lengths(), Lengths.Of.WIDTH),
				shapes.length(node, "y", scope.lengths(), Lengths.Of.HEIGHT));
		Scope inner = new Scope(shift.then(scope.toMm()), scope.style(), scope.lengths());
		if (target.is("symbol") || target.is("svg")) {
			Scope own = scope(target, inner);
			if (own.style().isShown()) {
				nested(target, own, out, node.attribute("width"), node.attribute("height"));
			}
		} else {
			draw(target, inner, out);
		}
		open.remove(target);
	}

	/** What an address of the form {@code #id} means; null, and told, if it is not in the file. */
	private Node target(Node from, String address) {
		String text = address.strip();
		if (!text.startsWith("#")) {
			remarks.once(from.place(), NLS.bind(Messages.Walk_remote, text.length() > 60 ? text.substring(0, 60) + "…" : text));
			return null;
		}
		Node target = ids.get(text.substring(1));
		if (target == null) {
			remarks.once(from.place(), NLS.bind(Messages.Walk_noTarget, text));
		}
		return target;
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
		children(node, new Scope(fit.then(frame), scope.style(), inner), found);
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

	/** What the clip path and the mask of an element leave of it. */
	private List<ImportedShape> masked(Node node, Scope scope, List<ImportedShape> found) throws UnreadableArtException {
		List<ImportedShape> left = found;
		for (String property : List.of("clip-path", "mask")) {
			String value = scope.style().get(property, "none").strip();
			if (left.isEmpty() || !value.startsWith("url(")) {
				continue;
			}
			Node target = target(node, value.substring(4, Math.max(4, value.lastIndexOf(')'))).replaceAll("['\"]", ""));
			if (target == null || !open.add(target)) {
				continue;
			}
			Region region = target.is("clipPath") ? clip(target, scope, left)
					: target.is("mask") ? mask(target, scope, left) : null;
			open.remove(target);
			if (region != null) {
				left = clipping.clipped(left, region, node);
			}
		}
		return left;
	}

	/** The frame of what clips or masks: that of the element, or the box round what it shows. */
	private static Transform frame(Node target, String unitsAttribute, Scope scope, List<ImportedShape> shown) {
		if (!target.attribute(unitsAttribute, "userSpaceOnUse").equals("objectBoundingBox")) {
			return scope.toMm();
		}
		Transform back = scope.toMm().inverse();
		Bounds box = Bounds.EMPTY;
		for (ImportedShape shape : shown) {
			if (shape instanceof Area area) {
				box = box.with(area.outline().transformed(back).bounds());
			} else if (shape instanceof Lines lines) {
				box = box.with(lines.outline().transformed(back).bounds());
			}
		}
		return box.isEmpty() ? scope.toMm()
				: new Transform(box.width(), 0, 0, box.height(), box.minX(), box.minY()).then(scope.toMm());
	}

	/** All that the shapes in a clip path cover, painted or not. */
	private Region clip(Node target, Scope scope, List<ImportedShape> shown) throws UnreadableArtException {
		Scope inner = scope(target, new Scope(frame(target, "clipPathUnits", scope, shown), Style.INITIAL, scope.lengths()));
		List<Region> regions = new ArrayList<>();
		for (Node child : target.children()) {
			for (Area area : areas(child, inner)) {
				FillRule rule = fillRule(cascade.of(child, inner.style()), "clip-rule");
				regions.add(clipping.region(area.outline(), child.is("text") ? FillRule.NON_ZERO : rule));
			}
		}
		Region all = clipping.union(regions);
		List<ImportedShape> own = masked(target, inner,
				new ArrayList<>(List.of(new Area("", all.toOutline(), FillRule.NON_ZERO, ""))));
		return own.isEmpty() ? Region.EMPTY : clipping.region(((Area) own.get(0)).outline(), FillRule.NON_ZERO);
	}

	private List<Area> areas(Node node, Scope scope) throws UnreadableArtException {
		List<ImportedShape> found = new ArrayList<>();
		draw(node, scope, found);
		return found.stream().filter(Area.class::isInstance).map(Area.class::cast).toList();
	}

	/** What the mask shows at least half: light shapes add to it, dark ones take away. */
	private Region mask(Node target, Scope scope, List<ImportedShape> shown) throws UnreadableArtException {
		Scope inner = scope(target,
				new Scope(frame(target, "maskContentUnits", scope, shown), Style.INITIAL, scope.lengths()));
		Region open = Region.EMPTY;
		for (Node child : target.children()) {
			for (Area area : areas(child, inner)) {
				Region region = clipping.region(area.outline(), area.rule());
				boolean light = area.colour().isEmpty() || Paint.luminance(area.colour(), inner.style()) >= 0.5;
				open = light ? clipping.union(List.of(open, region)) : clipping.subtract(open, region);
			}
		}
		return open;
	}
}
