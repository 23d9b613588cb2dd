package org.frisket.material.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.frisket.material.StockFamily;
import org.frisket.material.advice.Advice;
import org.frisket.material.advice.Confidence;
import org.frisket.material.advice.PressureChart;
import org.frisket.material.advice.Work;
import org.frisket.material.calibration.Estimate;
import org.frisket.material.calibration.OffsetCalibration;
import org.frisket.material.calibration.OffsetSheet;
import org.frisket.material.calibration.ScaleReading;
import org.frisket.material.calibration.ScaleSheet;
import org.frisket.material.tools.Blade;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.MachineOptions;
import org.frisket.material.tools.ToolKind;
import org.frisket.material.tools.ToolOptions;
import org.frisket.material.trials.CellPlace;
import org.frisket.material.trials.Settings;
import org.frisket.material.trials.StockFacts;
import org.frisket.material.trials.TestSheet;
import org.frisket.material.trials.Verdict;
import org.frisket.model.OperationKind;
import org.frisket.studio.StudioFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SettingsDeskTest {

	@TempDir
	private Path home;

	private static Work work() {
		return new Work(StockFacts.of(StockFamily.CARD, 216, 0), Machine.plain(), ToolOptions.usual(ToolKind.BLADE),
				OperationKind.CUT);
	}

	private static TestSheet sheet() {
		return SheetPlan.usual(work(), new Settings(0.3, 30, 30, 1)).sheet("sheet-1", LocalDate.of(2031, 5, 17));
	}

	@Test
	void whatIsChangedIsSeenAtTheNextLook() throws IOException {
		StudioFolder studio = new StudioFolder(home.resolve("studio"));
		assertEquals(DeskState.NOTHING, SettingsDesk.look(studio));
		assertFalse(Files.exists(studio.database()), "looking makes no store");
		Machine machine = MachineOptions.machine("harbour", Map.of("name", "Harbour cutter"));
		SettingsDesk.change(studio, settings -> {
			settings.save(machine);
			settings.save(ToolOptions.usual(ToolKind.BLADE));
			settings.save(sheet().judged(new CellPlace(0, 0), Optional.of(Verdict.THROUGH)));
			return null;
		});
		DeskState state = SettingsDesk.look(studio);
		assertEquals(List.of(machine), state.machines());
		assertEquals(List.of("harbour", "plain"), state.offeredMachines().stream().map(Machine::id).toList());
		assertEquals(1, state.trials().size());
		assertEquals(1, state.sheetsOf("").size());
		assertThrows(IllegalStateException.class, () -> SettingsDesk.change(studio, settings -> {
			settings.save(ToolOptions.usual(ToolKind.PEN));
			throw new IllegalStateException();
		}));
		assertEquals(state, SettingsDesk.look(studio), "wholly or not at all");
	}

	@Test
	void whatCannotBeReadSaysWhy() throws IOException {
		StudioFolder studio = new StudioFolder(home);
		Files.createDirectories(studio.database());
		assertTrue(assertThrows(IOException.class, () -> SettingsDesk.look(studio)).getMessage()
				.contains(studio.database().toString()));
	}

	@Test
	void usualToolsStandInUntilTheStudioHasItsOwn() {
		assertEquals(List.of("blade"), DeskState.NOTHING.toolsFor(OperationKind.CUT).stream().map(t -> t.id()).toList());
		assertEquals(List.of(), DeskState.NOTHING.toolsFor(OperationKind.PRINT));
		assertEquals(ToolKind.PEN, DeskState.NOTHING.tool("pen").orElseThrow().kind());
	}

	@Test
	void marksOfASheetThatIsNotKeptYetCountForAdvice() {
		TestSheet sheet = sheet();
		Work work = work();
		assertEquals(Confidence.RULE_OF_THUMB, DeskState.NOTHING.advisor(DeskState.NOTHING.trialsWith(sheet)).advise(work)
				.confidence());
		for (int column = 0; column < 5; column++) {
			sheet = sheet.judged(new CellPlace(column, 0), Optional.of(column < 2 ? Verdict.NOT_THROUGH : Verdict.THROUGH));
		}
		Advice advice = DeskState.NOTHING.advisor(DeskState.NOTHING.trialsWith(sheet)).advise(work);
		assertEquals(5, advice.trials());
		assertEquals(sheet, sheet.judged(new CellPlace(0, 1), Optional.of(Verdict.TORN)).judged(new CellPlace(0, 1),
				Optional.empty()));
		PressureChart chart = PressureChart.of(sheet.trials(), work, advice).orElseThrow();
		assertEquals(5, chart.marks().size());
		assertEquals("g/m²", chart.stock().unit());
		// tried from 20 to 40 in a range of 100: a tenth of it beside them
		assertEquals(10, chart.pressure().from());
		assertEquals(50, chart.pressure().to());
		assertEquals(List.of(10.0, 20.0, 30.0, 40.0, 50.0), chart.pressure().ticks());
		assertEquals(advice.settings().pressure(), chart.advised().pressure());
		assertTrue(chart.stock().from() < 216 && chart.stock().to() > 216);
		Work unknown = new Work(StockFacts.of(StockFamily.FILM, 0, 0), work.machine(), work.tool(), work.operation());
		assertTrue(PressureChart.of(List.of(), unknown, advice).isEmpty());
	}

	@Test
	void calibrationGoesIntoBladeAndMachine() {
		OffsetSheet offsets = OffsetSheet.about((Blade) ToolOptions.usual(ToolKind.BLADE), 0.05, 7);
		Estimate best = OffsetCalibration.best(offsets, 4);
		assertEquals(0.3, best.value(), 1e-9);
		assertEquals(0.05 / Math.sqrt(12), best.error(), 1e-9);
		Machine machine = new ScaleReading(199, 100.5, 0, 0, 0.1).against(new ScaleSheet(200, 100)).correct(Machine.plain());
		assertEquals(1.00503, machine.plotting().scaleX());
		assertEquals(0.99502, machine.plotting().scaleY());
		assertEquals(machine, MachineOptions.machine("plain", MachineOptions.texts(machine)));
	}
}
