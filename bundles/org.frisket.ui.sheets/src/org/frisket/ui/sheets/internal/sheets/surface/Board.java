package org.frisket.ui.sheets.internal.sheets.surface;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.model.Placement;
import org.frisket.model.Sheet;

/** What the surface shows, and what is done by hand on it. Only for the UI thread. */
public interface Board {

	/** A place for a copy. @param x and {@code y} of its centre in mm from the sheet's corner @param turn in degrees */
	record Move(Placement placement, Sheet sheet, double x, double y, double turn) {

		/** From which sheet to which. */
		private record Way(Object from, Sheet to) {
		}

		/** How far to the right of its present place, in the frames of both sheets. */
		public double dx() {
			return x - placement.getX();
		}

		/** How far down. */
		public double dy() {
			return y - placement.getY();
		}

		public boolean staysOnSheet() {
			return sheet == placement.eContainer();
		}

		/** Those from one sheet to another, or within one, which are all moved by as much. */
		public static List<List<Move>> together(List<Move> moves) {
			Map<Way, List<Move>> ways = new LinkedHashMap<>();
			for (Move move : moves) {
				ways.computeIfAbsent(new Way(move.placement.eContainer(), move.sheet), key -> new ArrayList<>()).add(move);
			}
			return List.copyOf(ways.values());
		}
	}

	/**
	 * What is in the way of copies on a sheet.
	 *
	 * @param sheet    where they would lie
	 * @param overlaps what lies in others or over the edge, in the frame of the sheet
	 * @param distance to what is nearest, in mm; infinite if nothing is nearer than the gap
	 * @param from     where it is nearest, in the frame of the sheet; as {@code to} null if nothing is near
	 */
	record Obstacle(Sheet sheet, Outline overlaps, double distance, Point from, Point to) {
	}

	/** What is written under a sheet, the most important line first. */
	List<String> caption(Sheet sheet);

	/** The same in as little room as can be. */
	String shortCaption(Sheet sheet);

	/** The colour of a sheet as #rrggbb; null for plain paper. */
	String colour(Sheet sheet);

	/** How a copy is drawn; empty if its part is no more, or not known yet. */
	Optional<PartPicture> picture(Placement placement);

	/** A free piece of a sheet that could be kept; empty if there is none, or it is not known. */
	Optional<Bounds> offcut(Sheet sheet);

	/** What of print and cuts is seen. */
	PrintLayer prints();

	/** What is in the way there, for those that go from one sheet to another together; those that are moved are not in each other's way. */
	List<Obstacle> obstacles(List<Move> moves);

	/** The nearest free place; empty if none is near. */
	Optional<Point> freePlace(Move move);

	/** Brings copies to other places, which is one step of undo. */
	void move(List<Move> moves);

	/** Turns copies about their centres. @param degrees clockwise as seen */
	void turn(List<Placement> placements, double degrees);
}
