package org.frisket.ui.sheets.internal.sheets;

import java.util.Optional;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Display;
import org.frisket.model.Job;
import org.frisket.model.Sheet;
import org.frisket.ui.sheets.internal.sheets.surface.PrintLayer;

/**
 * The print of the current sheet, read when it is to be seen and kept until something else is. Only for the UI
 * thread.
 */
final class SheetPrints implements PrintLayer {

	/** What of it can be shown and hidden. */
	enum Shown {
		PRINT, MARKS, CUTS, GUIDES
	}

	private final Display display;
	private final ReadPrint reader;
	private final Runnable changed;
	private boolean print = true;
	private boolean marks = true;
	private boolean cuts = true;
	private boolean guides;
	private Job job;
	private Reading reading = Reading.NONE;
	/** What was asked for last. */
	private ReadPrint.Request asked;
	/** Of the sheet that was asked for last, as far as it is known; null before. */
	private Print known;
	private Sheet sheet;

	/** @param changed told when there is something else to see */
	SheetPrints(Display display, Runnable changed) {
		this.display = display;
		this.changed = changed;
		reader = new ReadPrint(display, this::read);
	}

	/** Another job, or the same worked out anew. @param newJob null for none */
	void show(Job newJob, Reading newReading) {
		if (job != newJob) {
			forget();
		}
		job = newJob;
		reading = newReading;
		asked = null;
		reader.request(null);
	}

	boolean isShown(Shown what) {
		return switch (what) {
		case PRINT -> print;
		case MARKS -> marks;
		case CUTS -> cuts;
		case GUIDES -> guides;
		};
	}

	void toggle(Shown what) {
		switch (what) {
		case PRINT -> print = !print;
		case MARKS -> marks = !marks;
		case CUTS -> cuts = !cuts;
		case GUIDES -> guides = !guides;
		}
		changed.run();
	}

	private boolean isWanted() {
		return print || marks || guides;
	}

	@Override
	public Optional<Print> of(Sheet wanted, double scale) {
		int index = job == null ? -1 : job.getSheets().indexOf(wanted);
		if (!isWanted() || index < 0 || reading.jobs().isEmpty()) {
			return Optional.empty();
		}
		ReadPrint.Request request = new ReadPrint.Request(reading.jobs(), index, ReadPrint.step(wanted, scale), print, marks, guides,
				null);
		if (asked == null || !request.isServedBy(asked)) {
			if (sheet != wanted) {
				forget();
				sheet = wanted;
			}
			asked = request.on(EcoreUtil.copy(job));
			reader.request(asked);
		}
		return Optional.ofNullable(known);
	}

	@Override
	public boolean isSeen(Sheet wanted) {
		return print && known != null && known.printed() && sheet == wanted;
	}

	@Override
	public boolean cutsShown() {
		return cuts;
	}

	private void read(ReadPrint.Result result) {
		Sheet of = sheet;
		forget();
		sheet = of;
		if (result != null) {
			known = new Print(new Image(display, result.pixels()), result.printed(), result.guides().safe(), result.guides().borders());
		}
		changed.run();
	}

	/** Whether nothing is being read that is to be seen. */
	boolean isSettled() {
		return reader.getState() == org.eclipse.core.runtime.jobs.Job.NONE;
	}

	/** What is seen of the current sheet. */
	Optional<Print> known() {
		return Optional.ofNullable(known);
	}

	private void forget() {
		if (known != null) {
			known.image().dispose();
			known = null;
		}
		sheet = null;
	}

	void dispose() {
		reader.request(null);
		job = null;
		forget();
	}
}
