package org.frisket.ui.print.internal.marks;

import java.nio.file.Path;
import java.util.Optional;

import org.frisket.print.marks.MarkPlan;
import org.frisket.print.measure.KeptMeasures;
import org.frisket.print.measure.ScannedSheet;
import org.frisket.print.picture.Grey;

/** The scan of the sheet that is shown: looked through, taken in, laid under the marks, and what is said of it. */
final class ScanDesk implements ScanRun.Client {

	private final MarksView view;
	private final MarksActions actions;
	private final MarksPage page;
	private final ScanRun run;
	private ScanNews news = ScanNews.NONE;

	ScanDesk(MarksView view, MarksActions actions, MarksPage page) {
		this.view = view;
		this.actions = actions;
		this.page = page;
		run = new ScanRun(page.getDisplay(), this);
	}

	/** Looks for the marks of the sheet in a file. */
	void load(Path file) {
		if (view.state() == null || view.state().plan().isEmpty()) {
			view.say(Messages.MarksView_noMarksToFind);
		} else {
			forget();
			run.begin(file, view.state().plan().get());
		}
	}

	boolean isUnderWay() {
		return run.isUnderWay();
	}

	/** Leaves everything as it was. */
	void stop() {
		run.giveUp();
	}

	/** Another sheet is shown. */
	void forget() {
		run.giveUp();
		news = ScanNews.NONE;
		view.unsay();
		page.canvas().showScan(null);
	}

	/** What is said of the scan for as long as the marks are as it was taken in. */
	ScanNews news() {
		if (!news.holds(view.state())) {
			news = ScanNews.NONE;
		}
		page.offerScan(page.canvas().hasScan(), page.canvas().hasScan() && news.shown());
		return news;
	}

	/** Shows the scan under the marks, or no longer. */
	void show(boolean now) {
		news = news.shown(now);
		page.offerScan(page.canvas().hasScan(), now);
	}

	void toggle() {
		if (page.canvas().hasScan()) {
			show(!news.shown());
		}
	}

	@Override
	public void scanning(int percent) {
		if (!page.isDisposed()) {
			page.showScanning(percent);
		}
	}

	@Override
	public void found(MarkPlan plan, ScannedSheet scan, Optional<Grey> flat) {
		if (page.isDisposed() || !isShown(plan)) {
			return;
		}
		page.canvas().showScan(flat.orElse(null));
		String words = actions.take(scan, () -> isShown(plan));
		if (isShown(plan)) {
			news = new ScanNews(scan.found().findings(), words, KeptMeasures.of(view.state().sheet(), view.state().back()),
					plan, flat.isPresent());
			view.refresh();
		}
	}

	/** The job may have changed while a scan was looked through. */
	private boolean isShown(MarkPlan plan) {
		return view.state() != null && view.state().plan().filter(plan::equals).isPresent();
	}

	@Override
	public void failed(String message) {
		view.say(message);
	}
}
