package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.frisket.model.Jobs;
import org.frisket.model.Sheet;
import org.frisket.run.play.Moment;
import org.frisket.run.play.Playback;
import org.frisket.toolpath.Stage;
import org.frisket.toolpath.Timeline.Kind;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.Bench;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.bench.LastExports;
import org.frisket.ui.sheets.internal.run.RunView;
import org.frisket.ui.views.Views;
import org.frisket.ui.views.internal.way.Station;
import org.frisket.ui.views.internal.way.WayStrip;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The run of a job is watched, gone through by keys and the mouse, and put on paper. */
class RunViewUiTest extends OpenRoom {

	private static final long SECOND = 1_000_000_000L;

	private final OperationsJob made = new OperationsJob();
	private final AtomicLong clock = new AtomicLong();
	private RunView view;

	/** A tag with its mat, as they lie on the bench, or each twice on a sheet. */
	private RunView open(boolean laid) throws Exception {
		shelve();
		if (laid) {
			Sheet sheet = Jobs.addSheet(made.job, "harbour-white", 297, 210);
			// of the whole tag, and its mat apart
			Jobs.addPlacement(sheet, made.card.getId(), 75, 60, 0);
			Jobs.addPlacement(sheet, made.mat.getId(), 220, 60, 0);
		}
		Bench.open(page(), made.save(home.resolve("tag.frjob")));
		JobOnBench bench = Adapters.adapt(page().getActiveEditor(), JobOnBench.class);
		Screen.waitUntil("the job is checked", bench::isUpToDate);
		view = (RunView) page().showView(Views.RUN_ID);
		view.useClock(clock::get);
		Screen.waitUntil("the run is worked out", () -> view.player().playback() != null && view.isUpToDate());
		Screen.waitUntil("the picture listens", () -> view.canvas().isFocusControl() || view.canvas().setFocus());
		Screen.settle();
		return view;
	}

	@AfterEach
	void closeView() {
		Optional.ofNullable(page().findView(Views.RUN_ID)).ifPresent(page()::hideView);
	}

	private Playback run() {
		return view.player().playback();
	}

	private Moment now() {
		return view.player().now();
	}

	private Table legs() {
		Composite page = view.canvas().getParent().getParent().getParent();
		return (Table) Dialogs.all(page).filter(Table.class::isInstance).findFirst().orElseThrow();
	}

	@Test
	void legsComeInTheOrderOfStagesAndTheRunIsWatched() throws Exception {
		open(false);
		assertEquals(List.of(Stage.DRAW, Stage.CREASE, Stage.PERFORATE, Stage.KISS_CUT, Stage.CUT),
				run().legs().stream().map(leg -> leg.stage()).distinct().toList());
		Table legs = legs();
		assertEquals(run().legs().size(), legs.getItemCount());
		assertEquals("Draw", legs.getItem(0).getText(1));
		assertTrue(legs.getItem(1).getText(0).endsWith("after a stop"), legs.getItem(1).getText(0));
		assertEquals(0, legs.getSelectionIndex());
		assertTrue(view.notices().stream().anyMatch(text -> text.contains("hands, hair")), view.notices().toString());
		Screen.keepScreen("run-view");
		Screen.key("space");
		assertTrue(view.player().isPlaying());
		clock.addAndGet(SECOND / 10);
		Screen.waitUntil("time has gone by", () -> view.player().seconds() == 0.1);
		Screen.key("plus");
		Screen.key("plus");
		assertEquals(16, view.player().speed());
		clock.addAndGet(SECOND / 10);
		Screen.waitUntil("sixteen times as fast", () -> Math.abs(view.player().seconds() - 1.7) < 1e-9);
		Screen.key("space");
		assertFalse(view.player().isPlaying());
		clock.addAndGet(SECOND);
		Screen.key("minus");
		assertEquals(4, view.player().speed());
		assertEquals(1.7, view.player().seconds(), 1e-9);
		options();
		paper();
	}

	/** What is chosen for the run changes it, and what is wrong is said and changes nothing. */
	private void options() {
		Playback before = run();
		Text tabs = (Text) Dialogs.all(legs().getParent()).filter(each -> "tabs".equals(each.getData())).findFirst()
				.orElseThrow();
		tabs.setText("many");
		Screen.waitUntil("it is said", () -> Dialogs.all(tabs.getParent()).anyMatch(each -> Dialogs.text(each).contains("“many”")));
		assertSame(before, run());
		tabs.setText("3");
		Screen.waitUntil("it is worked out anew", () -> run() != before && view.isUpToDate());
		assertTrue(run().size() > before.size(), "closed cuts are parted by bridges");
		assertTrue(view.player().seconds() > 0, "and it is shown about where it was");
		Playback parted = run();
		exportIsAsChosen(tabs);
		tabs.setText("0");
		Screen.waitUntil("without them again", () -> run() != parted && view.isUpToDate());
	}

	/** The form of the export has the machine and the options of the run already, which are called by names. */
	private void exportIsAsChosen(Text tabs) {
		Combo direction = (Combo) Dialogs.all(tabs.getParent()).filter(each -> "direction".equals(each.getData())).findFirst()
				.orElseThrow();
		assertEquals(List.of("either", "clockwise", "counter-clockwise"), List.of(direction.getItems()));
		Dialogs.press((Button) Dialogs.all(legs().getParent())
				.filter(each -> each instanceof Button && Dialogs.text(each).startsWith("Export for Machine")).findFirst()
				.orElseThrow());
		Screen.waitUntil("the form is there", () -> Dialogs.isOpen("Export"));
		Shell form = Dialogs.shell("Export");
		Screen.waitUntil("machines are looked up", () -> machine(form).filter(each -> each.getItemCount() > 0).isPresent());
		Combo machine = machine(form).orElseThrow();
		assertEquals("No particular machine", machine.getText());
		assertTrue(Dialogs.all(form).anyMatch(each -> "run".equals(each.getData()) && Dialogs.text(each).endsWith(": 3")));
		form.close();
		Screen.settle();
	}

	private static Optional<Combo> machine(Shell form) {
		return Dialogs.all(form).filter(each -> "machine".equals(each.getData())).map(Combo.class::cast).findFirst();
	}

	private void paper() throws IOException {
		Path file = home.resolve("run.pdf");
		view.writeSheet(file);
		Screen.waitUntil("it is told", () -> view.said().contains(file.toString()));
		assertEquals("%PDF", new String(Files.readAllBytes(file), 0, 4, StandardCharsets.ISO_8859_1));
		Path taken = Files.createDirectory(home.resolve("taken.pdf"));
		view.writeSheet(taken);
		Screen.waitUntil("it says so", () -> view.said().startsWith(taken + " was not written"));
	}

	@Test
	void keysAndTheMouseGoToStrokesPartsAndTools() throws Exception {
		open(false);
		Screen.key("s");
		assertEquals(run().timeOf(0), view.player().seconds());
		Screen.key("t");
		assertEquals(Kind.STOP, now().kind());
		assertEquals(1, legs().getSelectionIndex());
		assertTrue(view.words().startsWith("Change the tool"), view.words());
		Screen.key("shift+t");
		assertEquals(0, view.player().seconds());
		Screen.key("p");
		Screen.key("p");
		assertEquals(run().legs().get(1).first(), now().stroke());
		Screen.key("End");
		assertTrue(now().isOver());
		Screen.key("shift+s");
		assertEquals(run().size() - 1, now().stroke());
		Screen.key("Left");
		assertTrue(view.player().seconds() < run().timeOf(run().size() - 1));
		// the middle of the creased line, from (10, 50) to (110, 50)
		Point crease = view.canvas().pixelOf(60, 50);
		Screen.click(view.canvas(), crease.x, crease.y);
		assertEquals(Stage.CREASE, run().stroke(now().stroke()).line().stage());
		double half = run().seconds() / 2;
		int y = view.scrub().getSize().y / 2;
		Screen.drag(view.scrub(), view.scrub().pixelOf(0), y, view.scrub().pixelOf(half), y);
		assertEquals(half, view.player().seconds(), run().seconds() / 50);
		assertEquals(now().leg(), legs().getSelectionIndex());
		hues();
	}

	/** What is done has the hue of its operation, and what is to come is pale. */
	private void hues() throws IOException {
		Screen.key("w");
		Screen.key("Home");
		RGB before = crease();
		Screen.key("End");
		RGB after = crease();
		RGB hue = ThemeColour.OPERATION_CREASE.colour().getRGB();
		assertTrue(off(hue, after) + 60 < off(hue, before), hue + ": " + before + " before, " + after + " after");
		Screen.keep(Screen.picture(view.canvas()), "run-done");
		Screen.key("Home");
		assertTrue(off(hue, after) + 60 < off(hue, crease()), "taken back");
		Screen.key("w");
	}

	/** What comes nearest to the hue about the middle of the creased line, whose dashes may leave a gap there. */
	private RGB crease() {
		Screen.settle();
		ImageData picture = Screen.picture(view.canvas());
		Point place = view.canvas().pixelOf(40, 50);
		RGB hue = ThemeColour.OPERATION_CREASE.colour().getRGB();
		RGB best = null;
		for (int x = 0; x < 20; x++) {
			for (int y = -2; y <= 2; y++) {
				RGB seen = Screen.pixel(picture, place.x + x, place.y + y);
				best = best == null || off(hue, seen) < off(hue, best) ? seen : best;
			}
		}
		return best;
	}

	private static int off(RGB a, RGB b) {
		return Math.abs(a.red - b.red) + Math.abs(a.green - b.green) + Math.abs(a.blue - b.blue);
	}

	@Test
	void wayTellsWhatTheSheetsTakeAndTheJobIsFollowed() throws Exception {
		open(true);
		WayStrip way = (WayStrip) Dialogs.all(view.getSite().getShell()).filter(WayStrip.class::isInstance).findFirst()
				.orElseThrow();
		Screen.keepScreen("run-laid");
		JobOnBench bench = Adapters.adapt(page().getActiveEditor(), JobOnBench.class);
		assertEquals(1, bench.job().getSheets().size());
		assertTrue(run().size() > 0);
		String before = way.state(Station.RUN);
		assertTrue(before.matches("\\d+ (s|min \\d+ s).*"), before);
		assertEquals("not yet", way.state(Station.HAND_OFF));
		Dialogs.answer("Cancel", () -> way.go(Station.HAND_OFF));
		LastExports.add(bench.job(), home.resolve("tag.svg"));
		assertEquals("tag.svg", way.state(Station.HAND_OFF));
		bench.edits().execute(new org.frisket.editing.elements.DeleteElements(
				List.of(Jobs.element(bench.job(), made.mat.getId()).orElseThrow())));
		Screen.waitUntil("it is worked out anew", () -> view.isUpToDate() && !way.state(Station.RUN).equals(before));
	}

	@Test
	void viewTeachesWhileThereIsNothing() throws Exception {
		view = (RunView) page().showView(Views.RUN_ID);
		Screen.settle();
		assertTrue(view.note().startsWith("Open a job"), view.note());
		Screen.keepScreen("run-empty");
	}
}
