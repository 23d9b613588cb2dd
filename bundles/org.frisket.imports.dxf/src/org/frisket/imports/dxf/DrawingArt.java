package org.frisket.imports.dxf;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.imports.ImportedArt;
import org.frisket.imports.ImportedLayer;
import org.frisket.imports.ImportedShape;
import org.frisket.imports.Remarks;
import org.frisket.imports.UnreadableArtException;

/** Goes through the entities of a drawing, blocks within blocks, and sorts what is drawn by layers. */
final class DrawingArt {

	/** How far cubics may lie from arcs, in mm. */
	private static final double DEVIATION = 0.001;
	private static final int DEEPEST = 32;
	/** Nodes and entities; blocks that put each other again and again may grow beyond all measure. */
	private static final int MOST = 1_000_000;
	private static final String[] COLOURS = { "", "#ff0000", "#ffff00", "#00ff00", "#00ffff", "#0000ff", "#ff00ff", "",
			"#808080", "#c0c0c0" };

	/**
	 * Where entities are put.
	 *
	 * @param layer for those on layer 0 of a block
	 */
	private record Place(Transform transform, String layer, int depth) {
	}

	private final String file;
	private final Drawing drawing;
	private final Monitor monitor;
	private final Remarks remarks = new Remarks();
	private final Map<String, List<ImportedShape>> layers = new LinkedHashMap<>();
	private final Set<String> open = new HashSet<>();
	private int drawn;

	DrawingArt(String file, Drawing drawing, Monitor monitor) {
		this.file = file;
		this.drawing = drawing;
		this.monitor = monitor;
	}

	/** @param unit of the coordinates, or null to take what the file says */
	ImportedArt art(LengthUnit unit) throws UnreadableArtException {
		double mm = (unit == null ? ownUnit() : unit).mm();
		place(drawing.entities(), new Place(Transform.scaling(mm, -mm), null, 0));
		List<ImportedLayer> art = new ArrayList<>();
		layers.forEach((name, shapes) -> art.add(new ImportedLayer(name, colour(name), shapes)));
		boolean told = unit != null || LengthUnit.of(drawing.unit()) != null;
		return new ImportedArt(art, Bounds.EMPTY, remarks.list(), told ? List.of() : List.of(DxfImporter.UNIT.name()));
	}

	private LengthUnit ownUnit() {
		LengthUnit own = LengthUnit.of(drawing.unit());
		if (own != null) {
			return own;
		}
		remarks.once("", drawing.unit() == 0 ? Messages.DrawingArt_noUnit
				: NLS.bind(Messages.DrawingArt_unknownUnit, drawing.unit()));
		return LengthUnit.MILLIMETRE;
	}

	private String colour(String layer) {
		int index = drawing.layer(layer).colour();
		return index > 0 && index < COLOURS.length ? COLOURS[index] : "";
	}

	private void place(List<Entity> entities, Place place) throws UnreadableArtException {
		for (Entity entity : entities) {
			monitor.check();
			count(entity, 1);
			String layer = place.layer() != null && entity.layer().equals("0") ? place.layer() : entity.layer();
			if (entity.integer(67, 0) == 1) {
				remarks.count("paper", place(entity), count -> NLS.bind(Messages.DrawingArt_paperSpace, count));
			} else if (drawing.layer(layer).isHidden() || entity.integer(60, 0) == 1) {
				remarks.count("hidden " + layer, place(entity),
						count -> NLS.bind(Messages.DrawingArt_hiddenLayer, layer, count));
			} else if (entity.type().equals("INSERT")) {
				insert(entity, layer, place);
			} else {
				draw(entity, layer, place.transform());
			}
		}
	}

	private void draw(Entity entity, String layer, Transform transform) throws UnreadableArtException {
		double stretch = Math.max(Math.hypot(transform.a(), transform.b()), Math.hypot(transform.c(), transform.d()));
		if (stretch == 0) {
			return;
		}
		Outline outline = new EntityCurves(DEVIATION / stretch).of(entity);
		if (outline == null) {
			remarks.count(entity.type(), place(entity),
					count -> NLS.bind(Messages.DrawingArt_leftOut, count, entity.type()));
		} else if (outline.isEmpty()) {
			if (entity.type().equals("SPLINE")) {
				remarks.once(place(entity), Messages.DrawingArt_spline);
			}
		} else {
			count(entity, outline.nodeCount());
			double width = entity.number(43, 0) * Math.sqrt(Math.abs(transform.determinant()));
			layers.computeIfAbsent(layer, name -> new ArrayList<>()).add(new ImportedShape.Lines(
					entity.text(5, ""), outline.transformed(transform), width, ""));
		}
	}

	private void count(Entity entity, long more) throws UnreadableArtException {
		drawn = (int) Math.min(Integer.MAX_VALUE, drawn + more);
		if (drawn > MOST) {
			throw new UnreadableArtException(file, GroupReader.place(entity.line()),
					NLS.bind(Messages.DrawingArt_tooMany, MOST));
		}
	}

	private static String place(Entity entity) {
		return GroupReader.place(entity.line());
	}

	private void insert(Entity entity, String layer, Place place) throws UnreadableArtException {
		String name = entity.text(2, "");
		Drawing.Block block = drawing.block(name);
		if (block == null) {
			remarks.once(place(entity), NLS.bind(Messages.DrawingArt_noBlock, name));
		} else if (!open.add(name)) {
			remarks.once(place(entity), NLS.bind(Messages.DrawingArt_blockCycle, name));
		} else {
			if (place.depth() == DEEPEST) {
				remarks.once(place(entity), NLS.bind(Messages.DrawingArt_tooDeep, DEEPEST));
			} else {
				put(entity, block, layer, place);
			}
			open.remove(name);
		}
	}

	private void put(Entity entity, Drawing.Block block, String layer, Place place) throws UnreadableArtException {
		int columns = Math.max(1, entity.integer(70, 1));
		int rows = Math.max(1, entity.integer(71, 1));
		count(entity, (long) columns * rows);
		Point at = entity.point(10);
		Transform turned = Transform.rotation(Math.toRadians(entity.number(50, 0)));
		Transform frame = turned.then(Transform.translation(at.x(), at.y())).then(Frame.of(entity))
				.then(place.transform());
		Transform scaled = Transform.translation(-block.base().x(), -block.base().y())
				.then(Transform.scaling(entity.number(41, 1), entity.number(42, 1)));
		double across = entity.number(44, 0);
		double up = entity.number(45, 0);
		for (int row = 0; row < rows; row++) {
			for (int column = 0; column < columns; column++) {
				Transform cell = scaled.then(Transform.translation(column * across, row * up)).then(frame);
				place(block.entities(), new Place(cell, layer, place.depth() + 1));
			}
		}
	}
}
