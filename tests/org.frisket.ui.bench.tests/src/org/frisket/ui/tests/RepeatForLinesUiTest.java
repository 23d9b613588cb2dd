package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Path;
import java.util.List;

import org.eclipse.swt.widgets.Shell;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Wording;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.junit.jupiter.api.Test;

/** Place cards for guests: a list is typed, each name has a card, and one undo takes them away. */
class RepeatForLinesUiTest extends OpenBench {

	private static final String TITLE = "One for Each Line";

	private static List<String> said(Job job) {
		return Jobs.elements(job).stream().filter(Wording.class::isInstance).map(each -> ((Wording) each).getText()).toList();
	}

	@Test
	void eachGuestOfATypedListHasACard() throws Exception {
		Job cards = Jobs.create("cards", "Place cards");
		Jobs.addOutline(Jobs.addLayer(cards, "Cards"), "M 0 0 L 0 50 L 80 50 L 80 0 Z");
		Jobs.addWording(Jobs.addLayer(cards, "Names"), "Name", 10);
		Path place = folder.resolve("cards.frjob");
		JobFile.save(cards, place);
		BenchEditor table = open(place);
		Screen.waitUntil("the cards are shown", table::isUpToDate);
		listen(table);
		Job job = table.document().job();
		String before = text(job);
		Screen.key("ctrl+a");
		Screen.events("key", "ctrl+b", "f");
		Screen.waitUntil("the list is asked for", () -> Dialogs.isOpen(TITLE));
		Shell dialog = Dialogs.shell(TITLE);
		bringToFront(dialog);
		Screen.keep(Screen.picture(dialog), "lines");
		// takes the place of what the wording says
		Screen.type("Anneke");
		Screen.key("Return");
		Screen.type("Bram");
		Screen.key("Return");
		Screen.key("Return");
		Screen.type("Signe");
		Screen.key("ctrl+Return");
		Screen.waitUntil("the list was taken", () -> !Dialogs.isOpen(TITLE));
		assertEquals(List.of("Anneke", "Bram", "Signe"), said(job));
		assertEquals(6, Jobs.elements(job).size());
		listen(table);
		Screen.key("ctrl+z");
		assertEquals(before, text(job));
	}

	@Test
	void withoutAWordingNothingIsAskedFor() {
		Screen.key("ctrl+a");
		Screen.events("key", "ctrl+b", "f");
		Screen.settle();
		assertFalse(Dialogs.isOpen(TITLE));
	}
}
