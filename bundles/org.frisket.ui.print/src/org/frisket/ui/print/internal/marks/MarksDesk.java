package org.frisket.ui.print.internal.marks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import org.frisket.geometry.Point;
import org.frisket.model.Sheet;
import org.frisket.print.measure.KeptMeasures;
import org.frisket.print.measure.MeasuredSheet;
import org.frisket.print.register.FitKind;

/** What is asked for at the marks of the sheet that is shown, by fields, buttons, clicks and keys. */
final class MarksDesk implements MarksPage.Client {

	private final MarksView view;
	private final MarksActions actions;

	MarksDesk(MarksView view, MarksActions actions) {
		this.view = view;
		this.actions = actions;
	}

	private MarksPage page() {
		return view.page();
	}

	@Override
	public void sheet(int index) {
		view.show(index);
	}

	@Override
	public void side(boolean back) {
		view.showSide(back);
	}

	/** Shows the sheet after this one, and after the last the first. */
	void nextSheet() {
		List<Sheet> sheets = view.front().job().getSheets();
		view.show((sheets.indexOf(view.state().sheet()) + 1) % sheets.size());
	}

	@Override
	public void placeMarks() {
		if (view.hasSheet()) {
			actions.place();
		}
	}

	void removeMarks() {
		actions.remove();
	}

	void forgetMeasures() {
		actions.measure(List.of());
	}

	/** Puts the caret where the next mark is to be measured. */
	void measure() {
		if (page().measuresLengths()) {
			page().lengths().begin();
		} else {
			view.state().measured().map(MeasuredSheet::measured).ifPresent(places -> page().places().measure(
					IntStream.range(0, places.size()).filter(i -> places.get(i).isEmpty()).findFirst().orElse(0)));
		}
	}

	@Override
	public void measuring(int mark) {
		page().canvas().light(mark);
	}

	@Override
	public void measuring(int one, int other) {
		page().canvas().light(one, other);
	}

	@Override
	public void markChosen(int mark) {
		if (!page().measuresLengths()) {
			page().places().measure(mark);
		}
	}

	@Override
	public void measured(int mark, Optional<Point> place) {
		List<Optional<Point>> places = new ArrayList<>(KeptMeasures.of(view.state().sheet(), view.state().back()));
		places.set(mark, place);
		actions.measure(places);
	}

	@Override
	public void measured(List<Optional<Point>> places) {
		measureLengths(false);
		actions.measure(places);
	}

	@Override
	public void problem(String words) {
		view.say(words);
	}

	@Override
	public void measureLengths(boolean now) {
		page().measureLengths(now);
		page().canvas().light();
	}

	void toggleLengths() {
		measureLengths(!page().measuresLengths());
	}

	@Override
	public void fit(FitKind kind) {
		actions.fit(kind);
	}

	@Override
	public void printer(String name) {
		actions.printer(name);
	}

	@Override
	public void keepPrinter() {
		actions.keepPrinter();
	}

	@Override
	public void managePrinters() {
		actions.managePrinters();
	}

	@Override
	public void loadScan() {
		actions.askForScan().ifPresent(view::loadScan);
	}

	@Override
	public void stopScan() {
		view.scan().stop();
	}

	@Override
	public void showScan(boolean now) {
		view.scan().show(now);
	}

	void toggleScan() {
		view.scan().toggle();
	}
}
