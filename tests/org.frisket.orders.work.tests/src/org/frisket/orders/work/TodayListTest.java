package org.frisket.orders.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.OperationKind;
import org.frisket.model.Stage;
import org.frisket.orders.StoredJob;
import org.frisket.testkit.BothDatabases;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is to be done today, by stock and day; on both databases. */
class TodayListTest extends BothDatabases {

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void groupsAreOfOneStockAndWhatIsDueComesFirst(boolean shared) throws Exception {
		SampleStudio studio = new SampleStudio(emptyStudio(shared));
		long late = studio.approved("Ferry banner", 1, SampleStudio.DAY.minusDays(1), SampleStudio.FILM);
		long never = studio.approved("Window letters", 2, null, SampleStudio.CARD);
		long both = studio.approved("Gift tags", 3, SampleStudio.DAY.plusDays(2), SampleStudio.CARD, SampleStudio.FILM);
		long done = studio.approved("Place cards", 4, SampleStudio.DAY, SampleStudio.CARD);
		studio.book().stage(done, Stage.CUT, SampleStudio.WHO, "");
		long asked = studio.approved("Bookmarks", 4, SampleStudio.DAY, SampleStudio.CARD);
		studio.book().stage(asked, Stage.ORDERED, SampleStudio.WHO, "");
		long empty = studio.approved(Jobs.create("job", "Nothing yet"));
		Today today = studio.today();
		assertEquals(List.of(SampleStudio.FILM, SampleStudio.CARD),
				today.cut().stream().map(group -> group.of().stock()).toList());
		assertEquals(List.of(late, both), numbers(today.cut().get(0)));
		assertEquals(List.of(both, never), numbers(today.cut().get(1)));
		assertEquals(List.of(done), today.finish().stream().map(line -> line.entry().number()).toList());
		assertTrue(today.presses(studio.entry(late)));
		assertEquals(1, today.problems().size());
		assertTrue(today.problems().get(0).contains(Long.toString(empty)), today.problems().get(0));
	}

	private static List<Long> numbers(Today.Group group) {
		return group.lines().stream().map(line -> line.entry().number()).toList();
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void aChangedDocumentIsReadAgain(boolean shared) throws Exception {
		SampleStudio studio = new SampleStudio(emptyStudio(shared));
		long tags = studio.approved("Gift tags", 3, null, SampleStudio.CARD);
		TodayList list = new TodayList(studio.folder());
		assertEquals(SampleStudio.CARD, list.read(SampleStudio.DAY).cut().get(0).of().stock());
		StoredJob open = studio.book().open(tags);
		open.job().getLayers().get(0).setStock(SampleStudio.FILM);
		studio.book().save(open.job(), open.entry().revision(), SampleStudio.WHO);
		assertEquals(SampleStudio.FILM, list.read(SampleStudio.DAY).cut().get(0).of().stock());
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void hiddenThingsAreNotWorked(boolean shared) throws Exception {
		SampleStudio studio = new SampleStudio(emptyStudio(shared));
		Job job = SampleStudio.job("Gift tags", 3, null, SampleStudio.CARD, SampleStudio.FILM);
		job.getLayers().get(1).setVisible(false);
		Jobs.addOperation(job.getLayers().get(0).getElements().get(0), OperationKind.PRINT);
		studio.approved(job);
		Today today = studio.today();
		assertTrue(today.cut().isEmpty(), "it is printed first");
		assertEquals(List.of(SampleStudio.CARD), today.print().stream().map(group -> group.of().stock()).toList());
	}
}
