package org.frisket.material.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Random;

import org.frisket.geometry.Bounds;
import org.frisket.material.StockFamily;
import org.frisket.material.advice.Work;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.MachineOptions;
import org.frisket.material.tools.Problem;
import org.frisket.material.tools.ToolKind;
import org.frisket.material.tools.ToolOptions;
import org.frisket.material.trials.CellPlace;
import org.frisket.material.trials.Parameter;
import org.frisket.material.trials.Settings;
import org.frisket.material.trials.SheetLayout;
import org.frisket.material.trials.StockFacts;
import org.frisket.material.trials.TestSheet;
import org.frisket.model.OperationKind;
import org.junit.jupiter.api.Test;

class SheetPlanTest {

	private static final LocalDate DAY = LocalDate.of(2031, 5, 17);
	private static final Settings BASE = new Settings(0.3, 30, 30, 1);
	private static final SweepText PRESSURE = new SweepText(Parameter.PRESSURE, "10", "30", "5");
	private static final SweepText SPEED = new SweepText(Parameter.SPEED, "10", "30", "10");

	private static Work work(Machine machine) {
		return new Work(StockFacts.of(StockFamily.CARD, 216, 0.3), machine, ToolOptions.usual(ToolKind.BLADE),
				OperationKind.CUT);
	}

	private static List<String> wrong(SweepText across, SweepText down, String size) {
		return new SheetPlan(work(Machine.plain()), BASE, across, down, size).problems().stream().map(Problem::option)
				.toList();
	}

	@Test
	void aPlanBecomesItsSheet() {
		SheetPlan plan = new SheetPlan(work(Machine.plain()), BASE, PRESSURE,
				new SweepText(Parameter.EXPOSURE, "0,1", "0,3 mm", "0.1"), "12,5");
		assertEquals(List.of(), plan.problems());
		TestSheet sheet = plan.sheet("sheet-1", DAY);
		assertEquals(List.of(10.0, 15.0, 20.0, 25.0, 30.0), sheet.across().values());
		assertEquals(List.of(0.1, 0.2, 0.3), sheet.down().values());
		assertEquals(12.5, plan.sizeMm());
		assertEquals(16, plan.job(sheet).getLayers().get(0).getElements().size());
	}

	@Test
	void whatIsWrongStandsAtItsField() {
		assertEquals(List.of(), wrong(PRESSURE, SPEED, "10"));
		assertEquals(List.of("across-from"), wrong(new SweepText(Parameter.PRESSURE, "ten", "30", "5"), SPEED, "10"));
		assertEquals(List.of("across-to"), wrong(new SweepText(Parameter.PRESSURE, "10", "5", "5"), SPEED, "10"));
		assertEquals(List.of("across-step"), wrong(new SweepText(Parameter.PRESSURE, "10", "30", "0"), SPEED, "10"));
		assertEquals(List.of("across-step"), wrong(new SweepText(Parameter.PRESSURE, "10", "30", "1"), SPEED, "10"));
		assertEquals(List.of("across-from"), wrong(new SweepText(Parameter.PRESSURE, "10.5", "30", "5"), SPEED, "10"));
		assertEquals(List.of("down-parameter"), wrong(PRESSURE, PRESSURE, "10"));
		assertEquals(List.of("size"), wrong(PRESSURE, SPEED, "4"));
		assertEquals(List.of("size"), wrong(PRESSURE, SPEED, ""));
		assertEquals(List.of("sheet"), wrong(PRESSURE, SPEED, "40"));
		assertEquals(List.of("down-from"), wrong(PRESSURE, new SweepText(Parameter.SPEED, "-5", "30", "5"), "10"));
		assertThrows(IllegalArgumentException.class, () -> new SheetPlan(work(Machine.plain()), BASE, PRESSURE, PRESSURE,
				"10").sheet("sheet-1", DAY));
	}

	@Test
	void whatIsProposedCanBeMadeOnAnyMachine() {
		Random random = new Random(5);
		for (int i = 0; i < 300; i++) {
			int least = random.nextInt(5);
			int most = least + 4 + random.nextInt(400);
			int step = 1 + random.nextInt(Math.max(1, (most - least) / 4));
			Machine machine = MachineOptions.machine("harbour", Map.of("pressure-least", "" + least, "pressure-most",
					"" + most, "pressure-step", "" + step, "width", "400mm", "height", "400mm"));
			double about = machine.pressure().ofNeutral(random.nextDouble());
			for (Parameter parameter : List.of(Parameter.SPEED, Parameter.PASSES, Parameter.EXPOSURE)) {
				Settings advised = new Settings(random.nextInt(8) / 10.0, about, random.nextInt(101), 1);
				SheetPlan plan = SheetPlan.usual(work(machine), advised);
				plan = new SheetPlan(plan.work(), plan.base(), plan.across(),
						SheetPlan.usual(parameter, plan.work(), advised), plan.size());
				assertEquals(List.of(), plan.problems(), plan.toString());
				assertTrue(plan.sheet("sheet-1", DAY).across().values().size() >= 1);
			}
		}
	}

	@Test
	void cellsOfEverySizeLieInTheSheetAndApart() {
		for (double size : new double[] { 5, 7.5, 10, 16, 40 }) {
			SheetPlan plan = new SheetPlan(work(Machine.plain()), BASE, PRESSURE, SPEED, "10");
			TestSheet sheet = plan.sheet("sheet-1", DAY);
			SheetLayout layout = new SheetLayout(sheet, size);
			for (CellPlace place : sheet.places()) {
				Bounds shapes = layout.cut(place).bounds();
				assertEquals(size, shapes.height(), 1e-9);
				assertEquals(layout.shapes(place).maxX(), shapes.maxX(), 1e-9);
				assertTrue(shapes.maxX() <= layout.width() + 1e-9 && shapes.maxY() <= layout.height() + 1e-9);
				for (CellPlace other : sheet.places()) {
					assertFalse(!other.equals(place) && layout.shapes(other).intersects(layout.shapes(place)));
				}
			}
		}
		assertThrows(IllegalArgumentException.class, () -> new SheetLayout(
				new SheetPlan(work(Machine.plain()), BASE, PRESSURE, SPEED, "10").sheet("s", DAY), 4.9));
	}

	@Test
	void numbersAreReadAsPeopleTypeThem() {
		assertEquals(0.25, TypedNumber.parse(" 0,25 mm", "mm"));
		assertEquals(12, TypedNumber.parse("12", "%"));
		assertEquals(-0.1, TypedNumber.parse("-0.1mm", "mm"));
		for (String wrong : List.of("", "mm", "1 in", "1e3", "1.2.3", "9999999")) {
			assertThrows(IllegalArgumentException.class, () -> TypedNumber.parse(wrong, "mm"), wrong);
		}
	}
}
