package org.frisket.editing.sheets;

import java.util.Collection;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.frisket.editing.RecordingEdit;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Sheet;

/** Adds an empty sheet behind the others. */
public final class AddSheet extends RecordingEdit {

	private final Job job;
	private final String stock;
	private final String colour;
	private final double width;
	private final double height;
	private final double margin;
	private final double gap;
	private Sheet sheet;

	/**
	 * @param stock  the id of its stock; may be null, as may the colour
	 * @param width  in mm along x
	 * @param height in mm along y
	 * @param margin in mm along its edges, @param gap in mm between parts
	 */
	public AddSheet(Job job, String stock, String colour, double width, double height, double margin, double gap) {
		super(Messages.AddSheet_name);
		this.job = job;
		this.stock = stock;
		this.colour = colour;
		this.width = width;
		this.height = height;
		this.margin = margin;
		this.gap = gap;
	}

	/** One more of the same kind, and empty. */
	public static AddSheet like(Sheet other) {
		return new AddSheet(Jobs.jobOf(other), other.getStock(), other.getColour(), other.getWidth(), other.getHeight(),
				other.getMargin(), other.getGap());
	}

	@Override
	public boolean canApply() {
		return job != null && width > 0 && height > 0 && margin >= 0 && gap >= 0 && Double.isFinite(width + height + margin + gap);
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(job);
	}

	@Override
	protected void change() {
		sheet = Jobs.addSheet(job, stock, width, height);
		sheet.setColour(colour);
		sheet.setMargin(margin);
		sheet.setGap(gap);
	}

	/** The new sheet; null before the edit is applied. */
	public Sheet sheet() {
		return sheet;
	}
}
