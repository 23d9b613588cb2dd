package org.frisket.editing.shapes;

import java.util.Collection;
import java.util.List;
import java.util.Objects;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;
import org.frisket.editing.RecordingEdit;
import org.frisket.editing.internal.Targets;
import org.frisket.model.Outline;

/** Gives an outline other path data, in its own frame; where it lies on the bench stays as it is. */
public final class ChangePath extends RecordingEdit {

	/** What was done to the nodes, as the edit is called. */
	public enum Change {

		MOVE(Messages.ChangePath_moveOne, Messages.ChangePath_move),
		DELETE(Messages.ChangePath_deleteOne, Messages.ChangePath_delete),
		ADD(Messages.ChangePath_addOne, Messages.ChangePath_add),
		CORNER(Messages.ChangePath_cornerOne, Messages.ChangePath_corner),
		SMOOTH(Messages.ChangePath_smoothOne, Messages.ChangePath_smooth),
		SYMMETRIC(Messages.ChangePath_symmetricOne, Messages.ChangePath_symmetric),
		BREAK(Messages.ChangePath_breakOne, Messages.ChangePath_break),
		JOIN(Messages.ChangePath_joinOne, Messages.ChangePath_join);

		private final String one;
		private final String several;

		Change(String one, String several) {
			this.one = one;
			this.several = several;
		}

		private String of(int nodes) {
			return nodes == 1 ? one : NLS.bind(several, nodes);
		}
	}

	private final Outline outline;
	private final String pathData;

	private ChangePath(String name, Outline outline, String pathData) {
		super(name);
		this.outline = outline;
		this.pathData = pathData;
	}

	/**
	 * What a repair came to.
	 *
	 * @param name     what the repair does: "Close contour"
	 * @param pathData in the outline's own frame; null if there is no repair, and then the edit cannot be applied
	 */
	public static ChangePath repaired(String name, Outline outline, String pathData) {
		return new ChangePath(name, outline, pathData);
	}

	/** A change to so many nodes: "Move 2 nodes". */
	public static ChangePath nodes(Change change, int count, Outline outline, String pathData) {
		return new ChangePath(change.of(count), outline, pathData);
	}

	/** A handle was moved. */
	public static ChangePath handle(Outline outline, String pathData) {
		return new ChangePath(Messages.ChangePath_handle, outline, pathData);
	}

	/** A curve was dragged, or a line was. */
	public static ChangePath segment(Outline outline, String pathData) {
		return new ChangePath(Messages.ChangePath_segment, outline, pathData);
	}

	/** Segments were made straight. */
	public static ChangePath lines(Outline outline, String pathData) {
		return new ChangePath(Messages.ChangePath_lines, outline, pathData);
	}

	/** Segments were made curves. */
	public static ChangePath curves(Outline outline, String pathData) {
		return new ChangePath(Messages.ChangePath_curves, outline, pathData);
	}

	/** An open contour was closed. */
	public static ChangePath close(Outline outline, String pathData) {
		return new ChangePath(Messages.ChangePath_close, outline, pathData);
	}

	/** A contour was turned to run the other way. */
	public static ChangePath reverse(Outline outline, String pathData) {
		return new ChangePath(Messages.ChangePath_reverse, outline, pathData);
	}

	@Override
	public boolean canApply() {
		return pathData != null && Targets.free(outline) && !Objects.equals(pathData, outline.getPathData());
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
