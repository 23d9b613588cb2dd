package org.frisket.imports.svg;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Region;
import org.frisket.geometry.Transform;
import org.frisket.geometry.clean.FillRule;
import org.frisket.imports.ImportedShape;
import org.frisket.imports.ImportedShape.Area;
import org.frisket.imports.ImportedShape.Lines;
import org.frisket.imports.UnreadableArtException;

/** Clip paths and masks: SVG 1.1, chapter 14. */
final class Masking {

	private final Walk walk;
	private final Cascade cascade;
	private final Addresses addresses;
	private final Clipping clipping;

	/** @param walk draws what lies in clip paths and masks */
	Masking(Walk walk, Cascade cascade, Addresses addresses, Clipping clipping) {
		this.walk = walk;
		this.cascade = cascade;
		this.addresses = addresses;
		this.clipping = clipping;
	}

	/** What the clip path and the mask of an element leave of it. */
	List<ImportedShape> masked(Node node, Scope scope, List<ImportedShape> found) throws UnreadableArtException {
		List<ImportedShape> left = found;
		for (String property : List.of("clip-path", "mask")) {
			String value = scope.style().get(property, "none").strip();
			if (left.isEmpty() || !value.startsWith("url(")) {
				continue;
			}
			Node target = addresses.target(node,
					value.substring(4, Math.max(4, value.lastIndexOf(')'))).replaceAll("['\"]", ""));
			if (target == null || !addresses.enter(target)) {
				continue;
			}
			Region region = target.is("clipPath") ? clip(target, scope, left)
					: target.is("mask") ? mask(target, scope, left) : null;
			addresses.leave(target);
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
		Scope inner = walk.scope(target,
				new Scope(frame(target, "clipPathUnits", scope, shown), Style.INITIAL, scope.lengths(), true));
		List<Region> regions = new ArrayList<>();
		for (Node child : target.children()) {
			FillRule rule = child.is("text") ? FillRule.NON_ZERO
					: Walk.fillRule(cascade.of(child, inner.style()), "clip-rule");
			for (Area area : areas(child, inner)) {
				regions.add(clipping.region(area.outline(), rule));
			}
		}
		Region all = clipping.union(regions);
		List<ImportedShape> own = masked(target, inner,
				new ArrayList<>(List.of(new Area("", all.toOutline(), FillRule.NON_ZERO, ""))));
		return own.isEmpty() ? Region.EMPTY : clipping.region(((Area) own.get(0)).outline(), FillRule.NON_ZERO);
	}

	private List<Area> areas(Node node, Scope scope) throws UnreadableArtException {
		List<ImportedShape> found = new ArrayList<>();
		walk.draw(node, scope, found);
		return found.stream().filter(Area.class::isInstance).map(Area.class::cast).toList();
	}

	/** What the mask shows at least half: light shapes add to it, dark ones take away. */
	private Region mask(Node target, Scope scope, List<ImportedShape> shown) throws UnreadableArtException {
		Scope inner = walk.scope(target,
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
