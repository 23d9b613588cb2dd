package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.frisket.editing.elements.DeleteElements;
import org.frisket.editing.sheets.ChangeSheet;
import org.frisket.geometry.Bounds;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.model.Placement;
import org.frisket.model.Sheet;
import org.frisket.sheets.leftovers.Leftover;
import org.frisket.sheets.leftovers.Leftovers;
import org.frisket.studio.Studio;
import org.frisket.studio.store.Store;
import org.frisket.ui.bench.StudioChoice;
import org.frisket.ui.sheets.internal.sheets.SheetsView;
import org.frisket.ui.views.Views;
import org.frisket.ui.views.internal.way.Station;
import org.frisket.ui.views.internal.way.WayStrip;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Parts laid on sheets, and moved on them by hand. */
class SheetsUiTest extends OpenBench {

	private SheetsView view;
	private String plate;
	private String disc;

	/** A plate with a window, a disc and two tags, all of one card. */
	@BeforeEach
	void openView() throws Exception {
		openTags(1);
		view = (SheetsView) page().showView(Views.SHEETS_ID);
		settled();
	}

	private void openTags(int quantity) throws Exception {
		Job job = Jobs.create("ferry", "Ferry tags");
		job.setQuantity(quantity);
		Layer card = Jobs.addLayer(job, "Card");
		card.setColour("#d9a441");
		plate = cut(card, "M20 20V60H80V20Z" + SampleJob.circle(50, 40, 10, true));
		disc = cut(card, SampleJob.circle(120, 40, 20, false));
		cut(card, "M20 80V100H70L80 90L70 80Z");
		cut(card, "M20 110V130H70L80 120L70 110Z");
		Path tags = folder.resolve("tags" + quantity + ".frjob");
		JobFile.save(job, tags);
		bench = open(tags);
		Screen.waitUntil("the job is checked", bench::isUpToDate);
	}

	@AfterEach
	void closeView() {
		page().hideView(view);
	}

	private static String cut(Layer layer, String data) {
		Outline outline = Jobs.addOutline(layer, data);
		Jobs.addOperation(outline, OperationKind.CUT);
		return outline.getId();
	}

	private List<Sheet> sheets() {
		return bench.document().job().getSheets();
	}

	private Placement placement(String part) {
		return sheets().stream().flatMap(sheet -> sheet.getPlacements().stream())
				.filter(each -> each.getPart().equals(part)).findFirst().orElseThrow();
	}

	private FigureCanvas surface() {
		return view.surface().canvas();
	}

	/** The middle of a part's box, in pixels of the surface. */
	private Point pixelOf(Placement placement) {
		Bounds box = view.surface().box(placement);
		return view.surface().zoom().toPixel(box.centre());
	}

	private void lay() {
		Screen.click(view.layButton(), 8, 8);
		Screen.waitUntil("parts are laid", () -> view.isSettled() && !sheets().isEmpty());
		settled();
	}

	private void settled() {
		Screen.waitUntil("the sheets are worked out", view::isSettled);
		Screen.settle();
	}

	private static WayStrip way(Composite parent) {
		for (Control child : parent.getChildren()) {
			if (child instanceof WayStrip strip) {
				return strip;
			}
			WayStrip found = child instanceof Composite composite ? way(composite) : null;
			if (found != null) {
				return found;
			}
		}
		return null;
	}

	@Test
	void partsAreLaidMovedAndPinned() throws Exception {
		WayStrip way = way(bench.getSite().getShell());
		assertEquals("none laid", way.state(Station.SHEETS));
		lay();
		assertFalse(sheets().isEmpty());
		int count = sheets().size();
		assertEquals(4, view.surface().shown());
		assertEquals(List.of(), view.surface().flags().planted());
		Screen.waitUntil("the way says so", () -> way.state(Station.SHEETS).matches("[0-9]+ sheets?, [0-9]+%"));

		Placement still = placement(plate);
		Placement moved = placement(disc);
		double x = moved.getX();
		Point from = pixelOf(moved);
		Point to = pixelOf(still).translate(20, 5);
		Screen.moveTo(surface(), from.x, from.y);
		Screen.pressButton();
		Screen.moveTo(surface(), (from.x + to.x) / 2, (from.y + to.y) / 2);
		Screen.moveTo(surface(), to.x, to.y);
		Screen.keep(Screen.picture(bench.getSite().getShell()), "sheets-drag");
		Screen.releaseButton();
		settled();
		Screen.waitUntil("the overlap is found", () -> !view.surface().flags().planted().isEmpty());
		Screen.keep(Screen.picture(bench.getSite().getShell()), "sheets-overlap");
		assertEquals("parts-overlap", view.surface().flags().planted().get(0).finding().id());
		assertEquals(still.eContainer(), moved.eContainer());

		Screen.key("ctrl+z");
		settled();
		assertEquals(x, placement(disc).getX());
		assertEquals(List.of(), view.surface().flags().planted());

		Point at = pixelOf(moved);
		Screen.click(surface(), at.x, at.y);
		assertEquals(List.of(moved), view.surface().selection());
		Screen.key("Right");
		settled();
		assertEquals(x + 1, moved.getX(), 1e-9);
		Screen.key("r");
		settled();
		assertEquals(90, moved.getTurn());
		Screen.key("p");
		settled();
		assertTrue(moved.isPinned());
		Screen.key("Delete");
		settled();
		assertEquals(3, view.surface().shown());
		Screen.key("ctrl+z");
		settled();
		assertEquals(4, view.surface().shown());
		double y = moved.getY();

		lay();
		Placement kept = placement(disc);
		assertTrue(kept.isPinned());
		assertEquals(x + 1, kept.getX(), 1e-9);
		assertEquals(y, kept.getY(), 1e-9);
		assertEquals(count, sheets().size());
	}

	@Test
	void layingCanBeGivenUpAndStopped() throws Exception {
		openTags(40);
		settled();
		Screen.click(view.layButton(), 8, 8);
		Screen.waitUntil("a layout is seen", () -> view.surface().ghosts() > 0);
		Screen.keep(Screen.picture(bench.getSite().getShell()), "sheets-laying");
		surface().setFocus();
		Screen.key("Escape");
		settled();
		assertEquals(0, view.surface().ghosts());
		assertTrue(sheets().isEmpty());

		Screen.click(view.layButton(), 8, 8);
		Screen.waitUntil("a layout is seen", () -> view.surface().ghosts() > 0);
		Screen.click(view.layButton(), 8, 8);
		settled();
		assertEquals(160, sheets().stream().mapToInt(sheet -> sheet.getPlacements().size()).sum());
		assertEquals(160, view.surface().shown());
		Screen.keep(Screen.picture(bench.getSite().getShell()), "sheets-many");
	}

	@Test
	void sheetsAreAddedFilledByHandAndTakenAway() throws Exception {
		lay();
		int count = sheets().size();
		surface().setFocus();
		Screen.events("key", "ctrl+b", "a");
		Screen.waitUntil("there is one more", () -> sheets().size() == count + 1);
		settled();
		Placement disk = placement(disc);
		Point at = pixelOf(disk);
		Screen.click(surface(), at.x, at.y);
		Screen.key("ctrl+shift+d");
		settled();
		assertEquals(5, view.surface().shown());
		Placement copy = view.surface().selection().get(0);
		assertEquals(disc, copy.getPart());

		// to the middle of the new sheet
		Sheet added = sheets().get(count);
		Point from = pixelOf(copy);
		Bounds sheet = view.surface().spread().places().get(added);
		Point to = view.surface().zoom().toPixel(sheet.centre());
		Screen.moveTo(surface(), from.x, from.y);
		Screen.pressButton();
		Screen.moveTo(surface(), (from.x + to.x) / 2, (from.y + to.y) / 2);
		Screen.moveTo(surface(), to.x, to.y);
		Screen.releaseButton();
		settled();
		assertEquals(List.of(copy), added.getPlacements());
		Screen.keep(Screen.picture(bench.getSite().getShell()), "sheets-second");

		// the copy is selected, so its sheet is the current one
		Screen.events("key", "ctrl+b", "x");
		Screen.waitUntil("it is gone", () -> sheets().size() == count);
		settled();
		assertEquals(4, view.surface().shown());
		Screen.key("ctrl+z");
		settled();
		assertEquals(5, view.surface().shown());

		Path broken = folder.resolve("broken.frjob");
		Files.writeString(broken, "no job");
		List<String> told = Dialogs.answer("OK", () -> view.takeAlong(broken));
		assertTrue(told.stream().anyMatch(text -> text.contains("broken.frjob")), told::toString);
		assertTrue(bench.document().job().getGuests().isEmpty());
	}

	@Test
	void guestsComeAlongMissingPartsAreForgottenAndOffcutsKept() throws Exception {
		Path home = Files.createTempDirectory("home");
		Studio.choose(Optional.of(home.resolve("studio")));
		try {
			Job cards = Jobs.create("cards", "Place cards");
			cards.setNumber("HL-7");
			Layer card = Jobs.addLayer(cards, "Card");
			card.setColour("#d9a441");
			cut(card, "M0 0V50H80V0Z");
			Path other = folder.resolve("cards.frjob");
			JobFile.save(cards, other);
			view.takeAlong(other);
			settled();
			assertEquals("HL-7", bench.document().job().getGuests().get(0).getNumber());
			lay();
			assertEquals(5, view.surface().shown());
			Screen.keep(Screen.picture(bench.getSite().getShell()), "sheets-guest");

			WayStrip way = way(bench.getSite().getShell());
			edits().execute(new DeleteElements(List.of(Jobs.element(bench.document().job(), plate).orElseThrow())));
			Screen.waitUntil("the way says so", () -> way.state(Station.SHEETS).equals("stale"));
			settled();
			surface().setFocus();
			Screen.events("key", "ctrl+b", "f");
			Screen.waitUntil("it is forgotten", () -> way.state(Station.SHEETS).startsWith("1 sheet"));
			settled();
			assertEquals(4, view.surface().shown());

			Dialogs.answer("Yes", () -> {
				Screen.events("key", "ctrl+b", "o");
				Screen.waitUntil("the offcut is kept", () -> view.said().contains("leftover-1"));
			});
			try (Store store = Store.openForReading(Studio.folder(), Leftovers.AREA)) {
				Leftover kept = new Leftovers(store).atHand().get(0);
				assertEquals("#d9a441", kept.colour());
				assertTrue(kept.width() * kept.height() > 210 * 100, kept.toString());
			}

			edits().execute(ChangeSheet.leftover(sheets().get(0), "leftover-1"));
			settled();
			surface().setFocus();
			Dialogs.answer("Yes", () -> {
				Screen.events("key", "ctrl+b", "u");
				Screen.waitUntil("it is taken away", () -> view.said().contains("taken away"));
			});
			try (Store store = Store.openForReading(Studio.folder(), Leftovers.AREA)) {
				assertEquals(List.of(), new Leftovers(store).atHand());
			}
		} finally {
			StudioChoice.apply();
			try (Stream<Path> all = Files.walk(home)) {
				for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
					Files.deleteIfExists(each);
				}
			}
		}
	}
}
