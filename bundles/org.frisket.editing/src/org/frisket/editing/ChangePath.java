package org.frisket.editing;

import java.util.Collection;
import java.util.List;
import java.util.Objects;

import org.eclipse.emf.ecore.EObject;
import org.frisket.model.Outline;

/** Gives an outline other path data, in its own frame; where it lies on the bench stays as it is. */
public final class ChangePath extends RecordingEdit {

	/** What was done to the nodes, as the edit is called. */
	public enum Change {

		MOVE("Move"), DELETE("Delete"), ADD("Add"), CORNER("Make", "corner"), SMOOTH("Make", "smooth"),
		SYMMETRIC("Make", "symmetric"), BREAK("Break at"), JOIN("Join");

		private final String verb;
		private final String outcome;

		Change(String verb) {
			this(verb, null);
		}

		Change(String verb, String outcome) {
			this.verb = verb;
			this.outcome = outcome;
		}

		private String of(int nodes) {
			String what = nodes == 1 ? verb + " node" : verb + " " + nodes + " nodes";
			return outcome == null ? what : what + " " + outcome;
		}
	}

	private final Outline outline;
	private final String pathData;

	private ChangePath(String name, Outline outline, String pathData) {
		super(name);
		this.outline = outline;
		this.pathData = pathData;
	}

	/** A change to so many nodes: "Move 2 nodes". */
	public static ChangePath nodes(Change change, int count, Outline outline, String pathData) {
		return new ChangePath(change.of(count), outline, pathData);
	}

	/** A handle was moved. */
	public static ChangePath handle(Outline outline, String pathData) {
		return new ChangePath("Move handle", outline, pathData);
	}

	/** A curve was dragged, or a line was. */
	public static ChangePath segment(Outline outline, String pathData) {
		return new ChangePath("Drag segment", outline, pathData);
	}

	/** Segments were made straight. */
	public static ChangePath lines(Outline outline, String pathData) {
		return new ChangePath("Make straight", outline, pathData);
	}

	/** Segments were made curves. */
	public static ChangePath curves(Outline outline, String pathData) {
		return new ChangePath("Make curved", outline, pathData);
	}

	/** An open contour was closed. */
	public static ChangePath close(Outline outline, String pathData) {
		return new ChangePath("Close path", outline, pathData);
	}

	/** A contour was turned to run the other way. */
	public static ChangePath reverse(Outline outline, String pathData) {
		return new ChangePath("Reverse path", outline, pathData);
	}

	@Override
	public boolean canApply() {
		return Targets.free(outline) && !Objects.equals(pathData, outline.getPathData());
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(outline);
	}

	@Override
	protected void change() {
		outline.setPathData(pathData);
	}
}
