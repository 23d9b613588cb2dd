package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.frisket.model.Stage;
import org.frisket.model.StageChange;
import org.frisket.orders.Entry;
import org.frisket.orders.PaperKind;
import org.frisket.orders.paper.quote.StudioQuote;
import org.frisket.studio.Studio;
import org.frisket.ui.orders.internal.Person;
import org.frisket.ui.orders.internal.week.WeekStrip;
import org.junit.jupiter.api.Test;

/** The docket follows what is selected; papers, stages and quotes come out of it. */
class DocketUiTest extends OpenDocket {

	@Test
	void docketFollowsTheSelectionAndPapersAreNotedOnceTheyAreWritten() throws Exception {
		Entry tags = tags();
		Entry banner = order("Ferry banner", "Gull Ferry Line", WEDNESDAY);
		WeekStrip strip = desk(2);
		assertFalse(page().isEditorAreaVisible());
		click(strip, tags);
		whole(tags);
		for (String part : List.of(String.valueOf(tags.number()), "Gift tags for the harbour fair", "Tern Bookshop", "Harbour blue",
				"80 × 50 mm", "Time of all runs", "Thread them", "Enquiry")) {
			assertSaid(part);
		}
		Screen.keepScreen("docket");
		papers(tags);
		click(strip, banner);
		whole(banner);
		assertSaid("Nothing is designed yet");
		Screen.keepScreen("docket-enquiry");
		stages(banner);
	}

	private void papers(Entry tags) throws Exception {
		Path lost = home.resolve("nowhere").resolve("docket.pdf");
		docket().write(PaperKind.DOCKET, lost);
		Screen.waitUntil("it is said that there is no such folder", () -> docket().said().contains("was not written"));
		assertTrue(docket().said().contains(lost.toString()), docket().said());
		assertEquals(List.of(), book().papers(tags.number()));
		Path file = home.resolve("docket.pdf");
		Dialogs.typeIntoNext("Docket as PDF", file.toString());
		Screen.key("ctrl+shift+k");
		Screen.waitUntil("the docket is written", () -> docket().said().contains(file.toString()) && isThere(file));
		assertEquals("%PDF", new String(Files.readAllBytes(file), 0, 4, java.nio.charset.StandardCharsets.US_ASCII));
		docket().write(PaperKind.PROOF, home.resolve("proof.pdf"));
		Screen.waitUntil("the proof is written", () -> docket().said().contains("proof.pdf"));
		assertEquals(List.of(PaperKind.DOCKET, PaperKind.PROOF),
				book().papers(tags.number()).stream().map(paper -> paper.kind()).toList());
		Screen.waitUntil("the docket knows of both",
				() -> words().stream().filter(text -> text.startsWith("Docket ·") || text.startsWith("Proof ·")).count() == 2);
	}

	private void stages(Entry banner) throws Exception {
		// whoever sits at this desk
		InstanceScope.INSTANCE.getNode(Person.NODE).put(Person.KEY, " Ottoline Vey ");
		page().activate(docket());
		Screen.settle();
		Screen.events("key", "ctrl+b", "s");
		Screen.waitUntil("it is asked which stage", () -> Dialogs.isOpen("Stage of job " + banner.number()));
		Shell dialog = Dialogs.shell("Stage of job " + banner.number());
		OpenBench.bringToFront(dialog);
		Screen.key("Return");
		Screen.waitUntil("it is ordered", () -> docket().entry().orElseThrow().stage() == Stage.ORDERED);
		assertEquals(Stage.ORDERED, book().find(banner.number()).stage());
		whole(banner);
		assertSaid("Enquiry → Ordered");
		assertTrue(words().stream().anyMatch(text -> text.startsWith("Enquiry → Ordered") && text.contains("Ottoline Vey")),
				words().toString());
		OpenBench.bringToFront(page().getWorkbenchWindow().getShell());
		page().activate(docket());
		Screen.events("key", "ctrl+b", "z");
		Screen.waitUntil("it is an enquiry again", () -> docket().entry().orElseThrow().stage() == Stage.ENQUIRY);
		assertEquals(List.of("Ottoline Vey", "Ottoline Vey"),
				book().history(banner.number()).stream().map(StageChange::getWho).toList());
		assertEquals("Ottoline Vey", book().find(banner.number()).changedBy());
	}

	@Test
	void quoteSaysWhatItComesToAndIsKeptForTheStudio() throws Exception {
		agree("Tern Bookshop", "Ten off a hundred tags");
		new StudioQuote(Studio.folder()).keep(Map.of("rate", "36 EUR", "extras", "Ribbon=4.80"));
		Entry tags = tags();
		WeekStrip strip = desk(1);
		click(strip, tags);
		whole(tags);
		assertSaid("Ten off a hundred tags");
		Screen.key("ctrl+shift+q");
		String title = "Quote for job " + tags.number();
		Screen.waitUntil("the form is open", () -> Dialogs.isOpen(title));
		Shell dialog = Dialogs.shell(title);
		OpenBench.bringToFront(dialog);
		assertTrue(Dialogs.all(dialog).map(Dialogs::text).anyMatch(text -> text.contains("Ten off a hundred tags")));
		String before = total(dialog);
		type(dialog, "tax", "ten");
		Button write = Dialogs.button(dialog, "Write Quote…");
		Screen.waitUntil("it is said that this is no number", () -> !write.isEnabled());
		type(dialog, "tax", "10");
		Screen.waitUntil("the total has tax in it", () -> write.isEnabled() && !total(dialog).equals(before));
		assertTrue(total(dialog).endsWith(" EUR"), total(dialog));
		Button keep = Dialogs.button(dialog, "Make all quotes of the studio like this from now on");
		Screen.click(keep, 10, keep.getSize().y / 2);
		assertTrue(keep.getSelection());
		Screen.keepScreen("docket-quote");
		Path file = home.resolve("quote.pdf");
		Dialogs.typeIntoNext("Quote as PDF", file.toString());
		Screen.click(write, write.getSize().x / 2, write.getSize().y / 2);
		Screen.waitUntil("the quote is written", () -> docket().said().contains(file.toString()) && isThere(file));
		assertEquals("10", new StudioQuote(Studio.folder()).texts().get("tax"));
		assertEquals(PaperKind.QUOTE, book().papers(tags.number()).get(0).kind());
	}

	private static String total(Shell dialog) {
		return Dialogs.all(dialog).map(Dialogs::text).filter(text -> text.startsWith("In all ")).findFirst().orElse("");
	}

	private static void type(Shell dialog, String name, String text) {
		Text field = (Text) Dialogs.all(dialog).filter(control -> name.equals(control.getData())).findFirst().orElseThrow();
		Screen.waitUntil("the field listens", () -> field.isFocusControl() || field.setFocus());
		Screen.settle();
		Screen.key("ctrl+a");
		Screen.type(text);
		Screen.waitUntil("it is typed: " + text, () -> field.getText().equals(text));
	}
}
