package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.frisket.material.StockFamily;
import org.frisket.material.desk.SettingsDesk;
import org.frisket.material.tools.Blade;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.MachineOptions;
import org.frisket.material.tools.ManualQuestions;
import org.frisket.material.tools.ToolKind;
import org.frisket.material.tools.ToolOptions;
import org.frisket.material.trials.Settings;
import org.frisket.material.trials.Setup;
import org.frisket.material.trials.StockFacts;
import org.frisket.material.trials.Trial;
import org.frisket.material.trials.Verdict;
import org.frisket.model.OperationKind;
import org.frisket.studio.Studio;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.material.internal.machines.MachinesEditor;
import org.frisket.ui.material.internal.machines.MachinesInput;
import org.frisket.ui.material.internal.machines.StudioDesk;
import org.junit.jupiter.api.Test;

/** Machines are described by their manuals, changed in forms, and calibrated. */
class MachinesUiTest extends OpenRoom {

	private Control all;

	private void open() throws Exception {
		MachinesEditor editor = (MachinesEditor) page().openEditor(new MachinesInput(), MachinesEditor.ID);
		all = editor.content();
		quiet();
	}

	private static void quiet() {
		Screen.waitUntil("all is kept", StudioDesk.get()::isQuiet);
		Screen.settle();
	}

	private Tree tree() {
		return Dialogs.all(all).filter(Tree.class::isInstance).map(Tree.class::cast).findFirst().orElseThrow();
	}

	private void select(String name) {
		for (TreeItem root : tree().getItems()) {
			for (TreeItem item : root.getItemCount() == 0 ? new TreeItem[] { root } : root.getItems()) {
				if (item.getText().equals(name)) {
					tree().setSelection(item);
					Event event = new Event();
					event.item = item;
					tree().notifyListeners(SWT.Selection, event);
					Screen.settle();
					return;
				}
			}
		}
		throw new AssertionError("nothing is called " + name);
	}

	private static void assertSaid(Control in, String text) {
		List<String> said = Dialogs.all(in).map(Dialogs::text).filter(each -> !each.isEmpty()).toList();
		assertTrue(said.stream().anyMatch(each -> each.contains(text)), text + " in " + said);
	}

	@Test
	void wizardAsksForTheManualAndKeepsTheMachine() throws Exception {
		open();
		assertSaid(all, "with its manual beside you");
		Screen.keepScreen("machines-empty");
		Dialogs.answer("Finish", () -> Dialogs.press(Dialogs.button(all, "New Machine…")), () -> {
			Shell wizard = Dialogs.shell("New Machine, by Its Manual");
			OpenBench.bringToFront(wizard);
			type(wizard, "name", "Harbour cutter");
			Dialogs.press(Dialogs.button(wizard, "Next >"));
			Dialogs.press(Dialogs.button(wizard, "Next >"));
			assertSaid(wizard, "Technical data");
			assertSaid(wizard, "Why: ");
			type(wizard, "width", "wide");
			assertSaid(wizard, "“wide”");
			assertFalse(Dialogs.button(wizard, "Next >").isEnabled());
			type(wizard, "width", "15mm");
			assertSaid(wizard, "the margins leave nothing to work on");
			keep("machines-wizard");
			type(wizard, "width", "330mm");
			assertTrue(Dialogs.button(wizard, "Next >").isEnabled());
		});
		quiet();
		Machine machine = stored().machines().get(0);
		assertEquals("harbour-cutter", machine.id());
		assertEquals("Harbour cutter", machine.name());
		assertEquals(330, machine.area().width());
		assertEquals(13, ManualQuestions.all().size());
		assertEquals("Harbour cutter", tree().getSelection()[0].getText(), "it is looked at");
		Screen.keepScreen("machines-machine");
	}

	private static void keep(String name) {
		try {
			Screen.keepScreen(name);
		} catch (java.io.IOException e) {
			throw new java.io.UncheckedIOException(e);
		}
	}

	@Test
	void fieldsAreKeptAndTakenBackAndWrongOnesAreSaid() throws Exception {
		SettingsDesk.change(Studio.folder(), settings -> {
			settings.save(ToolOptions.tool(ToolKind.BLADE, "blade", Map.of("name", "Harbour blade", "worn", "290")));
			return null;
		});
		open();
		select("Harbour blade");
		assertSaid(all, "290 of 300 m");
		assertSaid(all, "has cut 290 m");
		type(all, "angle", "90");
		Screen.key("Return");
		assertSaid(all, "“90”");
		quiet();
		assertEquals(45, ((Blade) stored().tools().get(0)).angle(), "what is wrong is not kept");
		type(all, "angle", "60");
		Screen.key("Return");
		quiet();
		assertEquals(60, ((Blade) stored().tools().get(0)).angle());
		Screen.keepScreen("machines-blade");
		Screen.key("ctrl+z");
		quiet();
		assertEquals(45, ((Blade) stored().tools().get(0)).angle());
		select("Rules of thumb");
		assertSaid(all, "common practice without a source");
		type(all, "one-pass-to", "250");
		Screen.key("Tab");
		quiet();
		assertEquals("250", stored().rules().get("one-pass-to"));
		Screen.keepScreen("machines-rules");
	}

	@Test
	void whatIsTakenAwayLeavesItsHistoryAndUndoBringsItBack() throws Exception {
		SettingsDesk.change(Studio.folder(), settings -> {
			settings.save(ToolOptions.tool(ToolKind.BLADE, "blade", Map.of("name", "Harbour blade", "worn", "12")));
			settings.add(new Trial("trial-1", LocalDate.of(2031, 5, 17), StockFacts.of(StockFamily.CARD, 216, 0),
					new Setup("plain", "blade", OperationKind.CUT), new Settings(0.4, 20, 30, 1), Verdict.THROUGH, 0, ""));
			return null;
		});
		open();
		assertFalse(Dialogs.button(all, "Remove").isEnabled(), "nothing is selected");
		select("Rules of thumb");
		assertFalse(Dialogs.button(all, "Remove").isEnabled(), "there are always rules");
		select("Harbour blade");
		click(Dialogs.button(all, "Remove"));
		quiet();
		assertTrue(stored().tools().isEmpty());
		assertEquals(1, stored().trials().size());
		assertTrue(stored().hadTool("blade"), "another one gets another id");
		assertFalse(Dialogs.button(all, "Remove").isEnabled());
		assertSaid(all, "with its manual beside you");
		Screen.keepScreen("machines-removed");
		Screen.key("ctrl+z");
		Screen.waitUntil("undo has begun", () -> !StudioDesk.get().isQuiet() || !StudioDesk.get().state().tools().isEmpty());
		quiet();
		assertEquals(12, stored().tools().get(0).edge().orElseThrow().wornMetres());
		select("Harbour blade");
		assertSaid(all, "12 of 300 m");
	}

	@Test
	void offsetIsReadFromItsSheetAndPutIntoTheBlade() throws Exception {
		SettingsDesk.change(Studio.folder(), settings -> {
			settings.save(ToolOptions.tool(ToolKind.BLADE, "blade", Map.of("name", "Harbour blade")));
			return null;
		});
		open();
		select("Harbour blade");
		assertFalse(Dialogs.button(all, "Put Into the Blade").isEnabled());
		reveal("miss-0");
		type(all, "miss-0", "-0.1");
		type(all, "miss-1", "x");
		assertSaid(all, "“x” is not a number in mm");
		type(all, "miss-1", "-0.05");
		type(all, "miss-2", "0");
		type(all, "miss-3", "0.078");
		assertSaid(all, "Blade offset 0.198 mm, standard error 0.001 mm");
		Screen.keepScreen("machines-offset");
		Dialogs.press(Dialogs.button(all, "Put Into the Blade"));
		quiet();
		assertEquals(0.2, ((Blade) stored().tools().get(0)).offset(), 0.005);
		Screen.key("ctrl+z");
		quiet();
		assertEquals(0.25, ((Blade) stored().tools().get(0)).offset());
		Button best = Dialogs.all(all).filter(Button.class::isInstance).map(Button.class::cast)
				.filter(button -> button.getText().equals("this one")).skip(5).findFirst().orElseThrow();
		best.setSelection(true);
		best.notifyListeners(SWT.Selection, new Event());
		assertSaid(all, "Blade offset 0.35");
		Dialogs.press(Dialogs.button(all, "Open Sheet as Job"));
		JobOnBench job = Adapters.adapt(page().getActiveEditor(), JobOnBench.class);
		assertEquals("Blade offset", job.job().getTitle());
	}

	@Test
	void scaleIsReadFromItsCrossAndPutIntoTheMachine() throws Exception {
		SettingsDesk.change(Studio.folder(), settings -> {
			settings.save(MachineOptions.machine("harbour", Map.of("name", "Harbour cutter")));
			return null;
		});
		open();
		select("Harbour cutter");
		assertSaid(all, "should be 180 mm across and 270 mm down");
		reveal("across");
		type(all, "across", "179.1");
		type(all, "down", "50");
		assertSaid(all, "measure again");
		type(all, "down", "270.27");
		assertSaid(all, "Multiply x with 1.00503");
		Screen.keepScreen("machines-scale");
		Dialogs.press(Dialogs.button(all, "Put Into the Machine"));
		quiet();
		assertEquals(1.00503, stored().machines().get(0).plotting().scaleX());
		assertEquals(0.999, stored().machines().get(0).plotting().scaleY());
		assertEquals("1.00503", ((Text) field(all, "scale-x")).getText());
	}

	/** Scrolls the form to where a field can be clicked. */
	private void reveal(String name) {
		Control field = field(all, name);
		Control at = field;
		while (!(at instanceof org.eclipse.swt.custom.ScrolledComposite)) {
			at = at.getParent();
		}
		((org.eclipse.swt.custom.ScrolledComposite) at).showControl(field);
		org.eclipse.swt.custom.ScrolledComposite scroll = (org.eclipse.swt.custom.ScrolledComposite) at;
		scroll.setOrigin(0, scroll.getOrigin().y + 200);
		Screen.settle();
	}
}
