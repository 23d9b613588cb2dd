package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.frisket.editing.layers.SetLayerStock;
import org.frisket.material.StockFamily;
import org.frisket.material.desk.SettingsDesk;
import org.frisket.material.tools.MachineOptions;
import org.frisket.material.tools.ToolKind;
import org.frisket.material.tools.ToolOptions;
import org.frisket.material.trials.Run;
import org.frisket.material.trials.Settings;
import org.frisket.material.trials.Setup;
import org.frisket.material.trials.StockFacts;
import org.frisket.material.trials.Trial;
import org.frisket.material.trials.Verdict;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.studio.Studio;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.material.internal.machines.JobOpener;
import org.frisket.ui.material.internal.machines.StudioDesk;
import org.frisket.ui.views.Views;
import org.frisket.ui.views.internal.properties.PropertiesView;
import org.junit.jupiter.api.Test;

/** After a job was cut, the studio is told what with and how it came out. */
class RunUiTest extends OpenRoom {

	private static final String TITLE = "Record Run";

	/** Two squares of 500 mm a side: 4 m of line, gone over twice. */
	private JobOnBench open() throws Exception {
		shelve();
		SettingsDesk.change(Studio.folder(), settings -> {
			settings.save(MachineOptions.machine("ferry", Map.of("name", "Ferry cutter")));
			settings.save(ToolOptions.tool(ToolKind.BLADE, "first", Map.of("name", "First blade")));
			settings.save(ToolOptions.tool(ToolKind.BLADE, "second", Map.of("name", "Second blade")));
			return null;
		});
		Job job = Jobs.create("ferry-banner", "Ferry banner");
		Layer layer = Jobs.addLayer(job, "Letters");
		layer.setStock("harbour-white");
		for (String square : new String[] { "M0,0 H500 V500 H0 Z", "M600,0 H1100 V500 H600 Z" }) {
			var operation = Jobs.addOperation(Jobs.addOutline(layer, square), OperationKind.CUT);
			operation.setPasses(2);
			operation.setTool("second");
		}
		JobOpener.open(page(), job);
		return Adapters.adapt(page().getActiveEditor(), JobOnBench.class);
	}

	private static Shell form() {
		Shell form = Dialogs.shell(TITLE);
		OpenBench.bringToFront(form);
		Combo work = (Combo) field(form, "work");
		Screen.waitUntil("the lines are measured", () -> work.getItemCount() > 0);
		Screen.waitUntil("the desk is read", StudioDesk.get()::isQuiet);
		Screen.waitUntil("settings are proposed", () -> !text(form, "pressure").isEmpty());
		Screen.settle();
		return form;
	}

	private static String text(Shell form, String name) {
		return field(form, name) instanceof Combo combo ? combo.getText() : ((Text) field(form, name)).getText();
	}

	@Test
	void metresAreMeasuredWearIsCountedAndWhatWorkedIsProposedNextTime() throws Exception {
		JobOnBench bench = open();
		Dialogs.answer("Keep Run", () -> Screen.key("ctrl+shift+r"), () -> {
			Shell form = form();
			assertEquals("Cut, Harbour white: 8 m", text(form, "work"));
			assertEquals("Harbour white", text(form, "stock"));
			assertEquals("Ferry cutter", text(form, "machine"));
			assertEquals("Second blade", text(form, "tool"), "as the job says");
			assertEquals("2", text(form, "passes"));
			assertEquals("8", text(form, "metres"));
			type(form, "passes", "3");
			assertEquals("12", text(form, "metres"), "nobody typed the metres");
			type(form, "pressure", "hard");
			assertTrue(Dialogs.all(form).anyMatch(control -> Dialogs.text(control).contains("“hard”")));
			assertFalse(Dialogs.button(form, "Keep Run").isEnabled());
			type(form, "pressure", "33");
			type(form, "metres", "12,5");
			keep("run-form");
		});
		Screen.waitUntil("it is kept", StudioDesk.get()::isQuiet);
		Run run = stored().runs().get(0);
		assertEquals(bench.job().getId(), run.job());
		assertEquals("harbour-white", run.stock().stock());
		assertEquals("ferry", run.setup().machine());
		assertEquals("second", run.setup().tool());
		assertEquals(33, run.settings().pressure());
		assertEquals(3, run.settings().passes());
		assertEquals(12.5, run.metres());
		assertEquals(Verdict.THROUGH, run.verdict());
		assertEquals(12.5, stored().tool("second").orElseThrow().edge().orElseThrow().wornMetres(), 1e-9);
		assertEquals(0, stored().tool("first").orElseThrow().edge().orElseThrow().wornMetres());
		Dialogs.answer("Cancel", () -> Screen.key("ctrl+shift+r"), () -> {
			Shell form = form();
			Screen.waitUntil("what worked is proposed", () -> text(form, "pressure").equals("33"));
		});
		assertEquals(1, stored().runs().size());
	}

	/** Which line of advice the form of operations shows; empty for none. */
	private static String advice(PropertiesView view) {
		return Dialogs.all(view.section("What is done").getParent()).filter(Label.class::isInstance).filter(Control::isVisible)
				.map(Dialogs::text).filter(text -> text.contains("maker's manual")).findFirst().orElse("");
	}

	@Test
	void adviceStandsBelowTheOperationAndFollowsWhatTheStudioKnows() throws Exception {
		JobOnBench bench = open();
		PropertiesView view = (PropertiesView) page().showView(Views.PROPERTIES_ID);
		bench.select(List.of(bench.job().getLayers().get(0).getElements().get(0)));
		Screen.waitUntil("advice is given", () -> advice(view).startsWith("Ferry cutter, Second blade: exposure "));
		assertTrue(advice(view).contains("rule of thumb; follow the maker's manual"), advice(view));
		Screen.keepScreen("properties-advice");
		SettingsDesk.change(Studio.folder(), settings -> {
			for (int pressure : new int[] { 5, 10, 15, 20 }) {
				settings.add(new Trial("trial-" + pressure, LocalDate.of(2031, 5, 17), StockFacts.of(StockFamily.CARD, 216, 0),
						new Setup("ferry", "second", OperationKind.CUT), new Settings(0.4, pressure, 30, 1),
						pressure < 15 ? Verdict.NOT_THROUGH : Verdict.THROUGH, 0, ""));
			}
			return null;
		});
		Screen.waitUntil("the trials count", () -> !advice(view).isEmpty() && !advice(view).contains("rule of thumb"));
		bench.edits().execute(new SetLayerStock(bench.job().getLayers().get(0), "nowhere"));
		Screen.waitUntil("nothing is known of another stock", () -> advice(view).isEmpty());
	}

	private static void keep(String name) {
		try {
			Screen.keepScreen(name);
		} catch (java.io.IOException e) {
			throw new java.io.UncheckedIOException(e);
		}
	}
}
