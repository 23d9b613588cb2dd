package org.frisket.orders.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.Statement;
import java.util.List;

import org.frisket.material.StockShelf;
import org.frisket.material.trials.SettingsArea;
import org.frisket.model.Stage;
import org.frisket.orders.Fact;
import org.frisket.orders.Repeats;
import org.frisket.orders.stages.StageRuleException;
import org.frisket.orders.stages.StageRules;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Store;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whoever brings a job to be cut, it is remembered what it was made with. */
class JobStagesTest {

	@TempDir
	private Path folder;
	private SampleStudio studio;
	private JobStages stages;
	private long tags;

	@BeforeEach
	void makeStudio() throws Exception {
		studio = new SampleStudio(new StudioFolder(folder.resolve("studio")));
		studio.shelve(SampleStudio.CARD, "20");
		stages = new JobStages(studio.folder(), SampleStudio.CLOCK);
		tags = studio.approved("Gift tags", 4, null, SampleStudio.CARD);
	}

	private List<String> stocks() throws Exception {
		return new Repeats(studio.folder()).facts(tags).stream().filter(fact -> fact.subject() == Fact.Subject.STOCK)
				.map(Fact::item).distinct().toList();
	}

	/** Nothing can be looked up in it from now on, but the order book is as it was. */
	private void breakSettings() throws Exception {
		try (Store store = Store.open(studio.folder(), StockShelf.AREA, SettingsArea.AREA)) {
			store.<Object, Exception>change(connection -> drop(connection));
		}
	}

	private static Object drop(Connection connection) throws Exception {
		try (Statement statement = connection.createStatement()) {
			statement.execute("DROP TABLE settings_run");
			return null;
		}
	}

	@Test
	void jobThatIsCutRemembersItsStock() throws Exception {
		JobStages.Moved printed = stages.moveAnyway(tags, Stage.PRINTED, SampleStudio.WHO, "");
		assertEquals(Stage.PRINTED, printed.entry().stage());
		assertEquals(List.of(), stocks());
		JobStages.Moved cut = stages.move(tags, Stage.CUT, SampleStudio.WHO, "new blade", List::of);
		assertEquals(Stage.CUT, cut.entry().stage());
		assertEquals(List.of(), cut.notes());
		assertEquals(List.of(SampleStudio.CARD), stocks());
		assertEquals(Stage.PRINTED, stages.undo(tags, cut.entry().since(), SampleStudio.WHO).stage());
	}

	@Test
	void jobThatGoesPastTheBladeRemembersToo() throws Exception {
		stages.moveAnyway(tags, Stage.ON_HOLD, SampleStudio.WHO, "card is late");
		stages.moveAnyway(tags, Stage.FINISHED, SampleStudio.WHO, "");
		assertEquals(List.of(SampleStudio.CARD), stocks());
	}

	@Test
	void ruleKeepsAJobWhereItIsUntilItIsDoneAnyway() throws Exception {
		new StageRules(studio.folder()).set("no-blocking-findings", true);
		assertThrows(StageRuleException.class,
				() -> stages.move(tags, Stage.CUT, SampleStudio.WHO, "", () -> List.of("an outline is open")));
		assertEquals(Stage.APPROVED, studio.entry(tags).stage());
		assertEquals(List.of(), stocks());
		assertEquals(Stage.CUT, stages.moveAnyway(tags, Stage.CUT, SampleStudio.WHO, "").entry().stage());
		assertEquals(List.of(SampleStudio.CARD), stocks());
	}

	@Test
	void whatCannotBeRememberedKeepsNoJobFromBeingCut() throws Exception {
		breakSettings();
		JobStages.Moved cut = stages.moveAnyway(tags, Stage.CUT, SampleStudio.WHO, "");
		assertEquals(Stage.CUT, cut.entry().stage());
		assertEquals(Stage.CUT, studio.entry(tags).stage());
		assertEquals(1, cut.notes().size());
		assertTrue(cut.notes().get(0).startsWith("what job " + tags + " was made with could not be remembered: "),
				cut.notes().get(0));
		assertEquals(List.of(), stocks());
	}

	@Test
	void runThatIsCutHasItsJobsRemember() throws Exception {
		PlannedRun run = studio.plan(tags);
		RunResult done = studio.runs().mark(run.number(), RunMark.whole(run), SampleStudio.WHO);
		assertEquals(List.of(), done.notes());
		assertEquals(Stage.CUT, studio.entry(tags).stage());
		assertEquals(List.of(SampleStudio.CARD), stocks());
	}

	@Test
	void runThatIsCutStandsWhenNothingCanBeRemembered() throws Exception {
		PlannedRun run = studio.plan(tags);
		RunMark whole = RunMark.whole(run);
		breakSettings();
		RunResult done = studio.runs().mark(run.number(), new RunMark(whole.step(), whole.pieces(), whole.used(),
				whole.seconds(), true, false, false, ""), SampleStudio.WHO);
		assertEquals(1, done.notes().size(), done.notes()::toString);
		assertEquals(Stage.CUT, studio.entry(tags).stage());
		assertEquals(PlannedRun.State.DONE, studio.runs().find(run.number()).state());
	}
}
