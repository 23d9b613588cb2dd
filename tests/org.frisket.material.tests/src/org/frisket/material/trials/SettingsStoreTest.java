package org.frisket.material.trials;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.frisket.material.StockFamily;
import org.frisket.material.tools.Blade;
import org.frisket.material.tools.Edge;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.MachineOptions;
import org.frisket.material.tools.Tool;
import org.frisket.material.tools.ToolKind;
import org.frisket.material.tools.ToolOptions;
import org.frisket.model.OperationKind;
import org.h2.jdbcx.JdbcDataSource;
import org.junit.jupiter.api.Test;

/** What is kept comes back the same, from memory and from a database made by the scripts. */
class SettingsStoreTest {

	private static final StockFacts CARD = new StockFacts("harbour-white", StockFamily.CARD, 216.33, 0.29, 1.5);
	private static final Setup SETUP = new Setup("harbour", "b1", OperationKind.KISS_CUT);
	private static final Settings SETTINGS = new Settings(0.35, 17, 40, 2);
	private static final String EVIL = "it's \"one\"; DROP TABLE settings_run; -- ü€𝄞";

	/** A check that both kinds of store have to pass. */
	private interface Check {

		void on(SettingsStore store) throws SQLException;
	}

	private static void both(Check check) throws SQLException, IOException {
		check.on(new MemorySettingsStore());
		JdbcDataSource source = new JdbcDataSource();
		source.setURL("jdbc:h2:mem:");
		try (Connection connection = source.getConnection()) {
			for (String script : text("index.txt").lines().toList()) {
				try (Statement statement = connection.createStatement()) {
					statement.execute(text(script));
				}
			}
			check.on(new JdbcSettingsStore(connection));
		}
	}

	private static String text(String name) throws IOException {
		try (InputStream in = SettingsArea.class.getResourceAsStream("migrations/" + name)) {
			return new String(in.readAllBytes(), StandardCharsets.UTF_8);
		}
	}

	private static Run run(int number, String job, StockFacts stock, Settings settings, Verdict verdict) {
		return new Run("run-" + number, Instant.parse("2031-05-17T09:30:00Z").plusSeconds(60L * number), job, stock, SETUP,
				settings, verdict, 100, EVIL);
	}

	@Test
	void whatIsRemovedIsGoneButNotWhatWasTriedAndRunWithIt() throws Exception {
		both(store -> {
			store.save(new Blade("b1", EVIL, 45, 0.25, new Edge(12, 300)));
			store.save(MachineOptions.machine("harbour", Map.of("name", EVIL)));
			store.save(MachineOptions.machine("ferry", Map.of()));
			Run run = run(1, "job-7", CARD, SETTINGS, Verdict.THROUGH);
			store.add(run);
			assertFalse(store.removeTool("harbour"));
			assertTrue(store.removeTool("b1"));
			assertFalse(store.removeTool("b1"));
			assertTrue(store.removeMachine("harbour"));
			assertFalse(store.removeMachine("harbour"));
			assertEquals(List.of(), store.tools());
			assertEquals(List.of("ferry"), store.machines().stream().map(Machine::id).toList());
			assertEquals(List.of(run), store.runs());
			store.save(ToolOptions.tool(ToolKind.BLADE, "b1", Map.of()));
			assertEquals(ToolOptions.tool(ToolKind.BLADE, "b1", Map.of()), store.tool("b1").orElseThrow(), "no old text is left");
		});
	}

	@Test
	void toolsMachinesAndRulesComeBack() throws Exception {
		both(store -> {
			for (ToolKind kind : ToolKind.values()) {
				store.save(ToolOptions.usual(kind));
			}
			Tool own = new Blade("a1", EVIL, 60, 0.31, new Edge(12.25, 80));
			store.save(own);
			store.save(own);
			assertEquals(Optional.of(own), store.tool("a1"));
			assertEquals(List.of("a1", "blade", "creasing-wheel", "pen", "perforating-blade"),
					store.tools().stream().map(Tool::id).toList());
			Machine machine = MachineOptions.machine("harbour", Map.of("pressure-least", "1", "pressure-most", "33"));
			store.save(machine);
			assertEquals(List.of(machine), store.machines());
			assertEquals(Optional.empty(), store.machine("other"));
			assertEquals(Map.of(), store.rules());
			store.saveRules(Map.of("bulk", "1.1"));
			store.saveRules(Map.of("bulk", "1.3"));
			assertEquals(Map.of("bulk", "1.3"), store.rules());
		});
	}

	@Test
	void trialsAndSheetsComeBackAndJudgedCellsAreTrials() throws Exception {
		both(store -> {
			Trial trial = new Trial("trial-1", TestSheetTest.DAY, CARD, SETUP, SETTINGS, Verdict.CORNERS_LIFTED, 0.4, "");
			store.add(trial);
			assertThrows(SQLException.class, () -> store.add(trial));
			TestSheet sheet = TestSheetTest.sheet("exposure=0.1..0.5/0.05", "passes=3,1");
			store.save(sheet);
			assertEquals(Optional.of(sheet), store.sheet("sheet-1"));
			assertEquals(List.of(trial), store.trials());
			TestSheet judged = sheet.with(Map.of(new CellPlace(8, 1), Verdict.THROUGH, new CellPlace(0, 0), Verdict.TORN));
			store.save(judged);
			assertEquals(List.of(judged), store.sheets());
			assertEquals(List.of("sheet-1-A1", "sheet-1-I2", "trial-1"), store.trials().stream().map(Trial::id).toList());
			assertEquals(judged.trials().get(0), store.trials().get(0));
			assertEquals(Optional.empty(), store.sheet(EVIL));
		});
	}

	@Test
	void aRunIsKeptAndWearsItsToolByTheAbrasionOfTheStock() throws Exception {
		both(store -> {
			store.save(new Blade("b1", "Number one", 45, 0.25, new Edge(10, 300)));
			Run run = run(1, "job-7", CARD, SETTINGS, Verdict.THROUGH);
			store.add(run);
			assertEquals(List.of(run), store.runs());
			assertEquals(160, store.tool("b1").orElseThrow().edge().orElseThrow().wornMetres());
			assertThrows(SQLException.class, () -> store.add(run));
			assertEquals(160, store.tool("b1").orElseThrow().edge().orElseThrow().wornMetres(), "counted once");
			store.save(ToolOptions.usual(ToolKind.PEN));
			store.add(new Run("run-2", run.at(), "job-7", CARD, new Setup("harbour", "pen", OperationKind.DRAW), SETTINGS,
					Verdict.THROUGH, 5, ""));
			assertEquals(ToolOptions.usual(ToolKind.PEN), store.tool("pen").orElseThrow());
		});
	}

	@Test
	void anEdgeWarnsBeforeItIsDullAndIfTheWorkWouldOutlastIt() {
		Tool sharp = new Blade("b", "Number one", 45, 0.25, new Edge(100, 300));
		assertTrue(BladeWear.warning(sharp, 50, 1).isEmpty());
		assertTrue(BladeWear.warning(sharp, 150, 1.5).orElseThrow().contains("within this work"));
		assertTrue(BladeWear.warning(sharp.withEdge(new Edge(250, 300)), 1, 1).orElseThrow().contains("250 m"));
		assertTrue(BladeWear.warning(sharp.withEdge(new Edge(300, 300)), 0, 1).orElseThrow().contains("change it"));
		assertTrue(BladeWear.warning(ToolOptions.usual(ToolKind.PEN), 1000, 1).isEmpty());
	}

	@Test
	void aReorderGetsWhatWorked() {
		StockFacts other = new StockFacts("ferry-blue", StockFamily.CARD, 216, 0.29, 1);
		Settings old = new Settings(0.3, 12, 40, 1);
		List<Run> runs = List.of(run(1, "job-7", CARD, old, Verdict.THROUGH), run(2, "job-7", CARD, SETTINGS, Verdict.THROUGH),
				run(3, "job-8", other, old, Verdict.THROUGH), run(4, "job-7", CARD, SETTINGS, Verdict.TORN));
		assertEquals("run-1", Reorder.of(runs, "job-7", "harbour-white", SETUP).orElseThrow().run().id(),
				"the later one has failed since");
		Reorder onlyFailed = Reorder.of(runs.subList(1, 4), "job-7", "harbour-white", SETUP).orElseThrow();
		assertEquals("run-2", onlyFailed.run().id());
		assertEquals(2, onlyFailed.words().size());
		assertEquals("run-3", Reorder.of(runs, "job-7", "ferry-blue", SETUP).orElseThrow().run().id());
		assertTrue(Reorder.of(runs, "job-8", "mist-grey", SETUP).orElseThrow().words().get(0).contains("another stock"));
		assertFalse(Reorder.of(runs, "job-9", "mist-grey", SETUP).isPresent());
		assertFalse(Reorder.of(runs, "job-7", "harbour-white", new Setup("harbour", "b2", OperationKind.KISS_CUT)).isPresent());
	}
}
