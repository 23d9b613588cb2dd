package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.frisket.model.Jobs;
import org.frisket.model.Wording;
import org.frisket.ui.bench.internal.picture.ElementPicture;
import org.frisket.ui.bench.internal.picture.JobPicture;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What is seen while a change goes on. */
class LivePictureUiTest extends OpenBench {

	private final WordingJob words = new WordingJob();
	private final List<JobPicture> pictures = new ArrayList<>();
	private Wording wording;

	@Override
	protected Path jobFile() throws IOException {
		return words.save(folder.resolve("words.frjob"));
	}

	@BeforeEach
	void editWords() {
		wording = (Wording) element(words.first);
		bench.typing().edit(wording);
		Screen.waitUntil("the caret has its place", bench::isUpToDate);
		bench.document().addPictureListener(() -> pictures.add(bench.document().picture()));
	}

	private ElementPicture letters(JobPicture picture) {
		return picture.element(words.first.getId());
	}

	private ElementPicture mat(JobPicture picture) {
		return picture.element(words.mat.getId());
	}

	@Test
	void lettersAreSeenFirstAndTheMatFollows() {
		JobPicture before = bench.document().picture();
		bench.typing().insert("s");
		Screen.waitUntil("the letter is worked through", bench::isUpToDate);
		JobPicture first = pictures.get(0);
		assertNotSame(letters(before), letters(first));
		assertSame(mat(before), mat(first), "the mat is still as it was");
		JobPicture last = pictures.get(pictures.size() - 1);
		assertSame(letters(first), letters(last), "nothing is drawn twice");
		assertNotSame(mat(before), mat(last));
		assertEquals("Harbours", ((Wording) Jobs.element(last.prepared().job(), words.first.getId()).orElseThrow())
				.getText());
		assertTrue(mat(last).bounds().maxX() > mat(before).bounds().maxX() + 5, "the mat reaches round the new letter");
	}

	@Test
	void whoTypesFastSeesOnePictureAfterTheOther() {
		for (int i = 0; i < 60; i++) {
			bench.typing().insert("n");
			Screen.rest(15);
		}
		Set<ElementPicture> seen = new LinkedHashSet<>();
		pictures.forEach(picture -> seen.add(letters(picture)));
		assertTrue(seen.size() > 5, "pictures while typing: " + seen.size());
		double reached = 0;
		for (ElementPicture each : seen) {
			assertTrue(each.bounds().maxX() >= reached, "none is older than the one before it");
			reached = each.bounds().maxX();
		}
		Screen.waitUntil("the line is worked through", bench::isUpToDate);
		assertEquals(wording.getText(), ((Wording) Jobs.element(bench.document().picture().prepared().job(),
				wording.getId()).orElseThrow()).getText());
	}

	@Test
	void picturesOfTypingUnderWayAreNotSeenAfterItIsUndone() {
		JobPicture before = bench.document().picture();
		bench.typing().insert("s");
		bench.commandStack().undo();
		Screen.waitUntil("the job is worked through", bench::isUpToDate);
		for (JobPicture picture : pictures) {
			assertEquals(letters(before).bounds(), letters(picture).bounds());
		}
	}
}
