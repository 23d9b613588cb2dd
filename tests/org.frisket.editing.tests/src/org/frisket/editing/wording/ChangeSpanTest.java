package org.frisket.editing.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;

import org.frisket.editing.Edit;
import org.frisket.model.FontRef;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.TextSpan;
import org.frisket.model.Wording;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Letters that are set otherwise than the rest of a wording. */
class ChangeSpanTest {

	private final Job job = Jobs.create("job", "Harbour Lane");
	private final Wording wording = Jobs.addWording(Jobs.addLayer(job, "Wording"), "Harbour Lane", 20);

	@BeforeEach
	void setUp() {
		wording.setFont(font("Liberation Sans"));
	}

	private static FontRef font(String name) {
		return Jobs.font(name, null, null, null);
	}

	private void apply(Edit edit) {
		assertTrue(edit.canApply());
		edit.apply();
	}

	/** Such as {@code 0-3 serif 12 smcp}. */
	private String spans() {
		return wording.getSpans().stream().map(ChangeSpanTest::text).collect(Collectors.joining("; "));
	}

	private static String text(TextSpan span) {
		return span.getStart() + "-" + span.getEnd() + (span.getFont() == null ? "" : " " + span.getFont().getName())
				+ (span.getHeight() > 0 ? " " + span.getHeight() : "")
				+ (span.getFeatures() == null ? "" : " " + span.getFeatures());
	}

	@Test
	void lettersGetAHeightOfTheirOwnAndLoseItAgain() {
		apply(ChangeSpan.height(wording, 0, 1, 30));
		assertEquals("0-1 30.0", spans());
		apply(ChangeSpan.height(wording, 0, 1, 20));
		assertEquals("", spans());
	}

	@Test
	void changeWithinASpanPartsIt() {
		apply(ChangeSpan.font(wording, 0, 7, font("Serif")));
		apply(ChangeSpan.height(wording, 2, 4, 12));
		assertEquals("0-2 Serif; 2-4 Serif 12.0; 4-7 Serif", spans());
		apply(ChangeSpan.height(wording, 2, 4, 0));
		assertEquals("0-7 Serif", spans());
		apply(ChangeSpan.font(wording, 3, 12, null));
		assertEquals("0-3 Serif", spans());
	}

	@Test
	void neighboursThatBecomeAlikeAreOne() {
		apply(ChangeSpan.features(wording, 8, 10, "smcp"));
		apply(ChangeSpan.features(wording, 10, 12, "smcp"));
		assertEquals("8-12 smcp", spans());
		apply(ChangeSpan.features(wording, 9, 11, " "));
		assertEquals("8-9 smcp; 11-12 smcp", spans());
	}

	@Test
	void whatIsSoAlreadyOrLiesBeyondTheTextIsNoChange() {
		assertFalse(ChangeSpan.height(wording, 0, 5, 20).canApply());
		assertFalse(ChangeSpan.font(wording, 0, 5, font("Liberation Sans")).canApply());
		assertFalse(ChangeSpan.height(wording, 12, 20, 5).canApply());
		assertFalse(ChangeSpan.height(wording, 4, 4, 5).canApply());
		assertFalse(ChangeSpan.height(wording, 0, 5, -1).canApply());
		assertFalse(ChangeSpan.height(wording, 0, 5, Double.NaN).canApply());
		apply(ChangeSpan.height(wording, 8, 99, 5));
		assertEquals("8-12 5.0", spans());
	}

	@Test
	void stretchesCoverTheRangeInOrder() {
		apply(ChangeSpan.height(wording, 2, 4, 12));
		List<Stretch> stretches = Stretch.of(wording, 1, 6);
		assertEquals(List.of(1, 2, 4), stretches.stream().map(Stretch::start).toList());
		assertEquals(List.of(2, 4, 6), stretches.stream().map(Stretch::end).toList());
		assertEquals(List.of(20.0, 12.0, 20.0), stretches.stream().map(s -> s.heightIn(wording)).toList());
		assertEquals("Liberation Sans", stretches.get(1).fontIn(wording).getName());
		assertEquals(List.of(), Stretch.of(wording, 6, 6));
	}

	/** Against an array with a height for each letter. */
	@Test
	void spansSayTheSameOfEachLetterAsAnArrayWould() throws Exception {
		Random random = new Random(7);
		double[] heights = new double[12];
		Arrays.fill(heights, 20);
		for (int round = 0; round < 500; round++) {
			int start = random.nextInt(12);
			int end = start + random.nextInt(13 - start);
			double height = new double[] { 20, 12, 30 }[random.nextInt(3)];
			Edit edit = ChangeSpan.height(wording, start, end, height);
			byte[] before = JobFile.toBytes(job);
			double[] expected = heights.clone();
			Arrays.fill(expected, start, end, height);
			assertEquals(!Arrays.equals(expected, heights), edit.canApply(), "round " + round);
			if (edit.canApply()) {
				edit.apply();
				edit.undo();
				assertEquals(new String(before, StandardCharsets.UTF_8),
						new String(JobFile.toBytes(job), StandardCharsets.UTF_8), "round " + round);
				edit.redo();
			}
			heights = expected;
			for (Stretch stretch : Stretch.of(wording, 0, 12)) {
				for (int i = stretch.start(); i < stretch.end(); i++) {
					assertEquals(heights[i], stretch.heightIn(wording), "letter " + i + " in round " + round);
				}
			}
			assertFewest(round);
		}
	}

	private void assertFewest(int round) {
		List<TextSpan> spans = wording.getSpans();
		for (int i = 0; i < spans.size(); i++) {
			assertTrue(spans.get(i).getHeight() > 0 && spans.get(i).getHeight() != 20, "plain in round " + round);
			assertTrue(i == 0 || spans.get(i).getStart() > spans.get(i - 1).getEnd()
					|| spans.get(i).getStart() == spans.get(i - 1).getEnd()
							&& spans.get(i).getHeight() != spans.get(i - 1).getHeight(),
					"parted without need in round " + round + ": " + spans());
		}
	}
}
