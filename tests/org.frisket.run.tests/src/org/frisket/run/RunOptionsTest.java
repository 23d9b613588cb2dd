package org.frisket.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.HashSet;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;
import org.frisket.material.tools.ToolKind;
import org.frisket.material.tools.ToolOptions;
import org.frisket.toolpath.RunChoices;
import org.junit.jupiter.api.Test;

class RunOptionsTest {

	private static RunChoices choices(Map<String, String> texts) {
		return RunOptions.choices(OptionValues.of(RunOptions.options(), texts));
	}

	@Test
	void everyChoiceCanBeSet() {
		assertEquals(new RunChoices(1, 2, false, new RunChoices.Tabs(3, 0.8, 60), RunChoices.PassOrder.SHEET, 4, 0.25,
				RunChoices.Direction.COUNTER_CLOCKWISE, 77, 5),
				choices(Map.ofEntries(Map.entry("lead-in", "1mm"), Map.entry("overcut", "2mm"), Map.entry("shared-once", "no"),
						Map.entry("tabs", "3"), Map.entry("tab-width", "0.8mm"), Map.entry("tabs-from", "60mm"),
						Map.entry("pass-order", "sheet"), Map.entry("tight-radius", "4mm"), Map.entry("tight-speed", "25"),
						Map.entry("direction", "counter-clockwise"), Map.entry("effort", "77"), Map.entry("seed", "5"))));
		assertEquals(RunOptions.options().size(),
				new HashSet<>(RunOptions.options().stream().map(Option::name).toList()).size());
		assertThrows(IllegalArgumentException.class, () -> choices(Map.of("tight-speed", "0")));
		assertThrows(IllegalArgumentException.class, () -> choices(Map.of("overcut", "-1mm")));
	}

	@Test
	void cutsCloseByTheOffsetOfTheBlade() {
		assertEquals(0.25, choices(Map.of()).overcut());
		assertEquals(0.25, choices(Map.of()).leadIn());
		Workshop workshop = Runs.workshop(ToolOptions.tool(ToolKind.BLADE, "b1", Map.of("offset", "0.6mm")));
		List<Option> options = RunOptions.options(workshop);
		assertEquals(RunOptions.options().stream().map(Option::name).toList(), options.stream().map(Option::name).toList());
		RunChoices own = RunOptions.choices(OptionValues.defaults(options));
		assertEquals(0.6, own.overcut());
		assertEquals(0.6, own.leadIn());
		assertEquals(RunOptions.options(), RunOptions.options(Runs.workshop()));
	}

	/** d sin φ: 0.25 mm at 10 degrees miss a corner by 0.043412 mm (derived in the project's check values). */
	@Test
	void cornersAreSwungRoundFromTenDegreesOn() {
		OptionValues values = OptionValues.defaults(RunOptions.options());
		Workshop workshop = RunOptions.workshop(Workshop.plain(), values);
		assertEquals(Workshop.plain(), workshop);
		assertEquals(0.043412, 0.25 * Math.sin(workshop.threshold()), 1e-6);
		assertEquals(Math.toRadians(45),
				RunOptions.workshop(Workshop.plain(), OptionValues.of(RunOptions.options(), Map.of("swing-from", "45"))).threshold());
	}
}
