package org.frisket.editing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

import org.frisket.editing.arranging.MoveElements;
import org.frisket.editing.layers.RemoveLayer;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Outline;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A job whose file is changed by another program, a newer Frisket at that. */
class ReloadJobTest {

	private static final String HERE = " hereOnly=\"known to a newer Frisket\"";
	private static final String THERE = " thereOnly=\"known to a newer Frisket too\"";

	private String first;
	private String second;
	private Job job;

	@BeforeEach
	void makeJobs() throws IOException {
		Job made = Jobs.create("tags", "Gift tags");
		Layer layer = Jobs.addLayer(made, "Card");
		Outline tag = Jobs.addOutline(layer, "M0 0L30 0L30 50Z");
		Jobs.addMat(layer, 2, List.of(tag));
		Jobs.addGuide(made, true, 12);
		first = again(text(made).replace(" title=", HERE + " title=").replace(" pathData=", HERE + " pathData="));
		made.setTitle("Gift tags, other card");
		Jobs.addLayer(made, "Film");
		Jobs.addGroup(made, Jobs.elements(made));
		second = again(text(made).replace(" title=", THERE + " title=").replace(" pathData=", THERE + " pathData="));
		job = read(first);
	}

	private static Job read(String text) throws IOException {
		return JobFile.load(text.getBytes(StandardCharsets.UTF_8), "tags.frjob");
	}

	private static String text(Job job) throws IOException {
		return new String(JobFile.toBytes(job), StandardCharsets.UTF_8);
	}

	/** As this version writes it. */
	private static String again(String text) throws IOException {
		return text(read(text));
	}

	@Test
	void fileIsTakenOverAndGivenBackWithWhatIsNotKnownOfIt() throws IOException {
		assertTrue(first.contains(HERE.strip()) && second.contains(THERE.strip()), first + second);
		ReloadJob reload = new ReloadJob(job, read(second));
		assertTrue(reload.canApply());
		reload.apply();
		assertEquals(second, text(job));
		reload.undo();
		assertEquals(first, text(job));
		reload.redo();
		assertEquals(second, text(job));
		reload.undo();
		assertEquals(first, text(job));
	}

	@Test
	void editsBeforeAndAfterAreUndoneInTurn() throws IOException {
		MoveElements before = new MoveElements(List.of(Jobs.elements(job).get(0)), 3, 4);
		before.apply();
		ReloadJob reload = new ReloadJob(job, read(second));
		reload.apply();
		RemoveLayer after = new RemoveLayer(job.getLayers().get(1));
		after.apply();
		after.undo();
		reload.undo();
		before.undo();
		assertEquals(first, text(job));
		before.redo();
		reload.redo();
		after.redo();
		assertEquals(1, job.getLayers().size());
		assertEquals("Gift tags, other card", job.getTitle());
	}

	@Test
	void fileThatSaysTheSameIsNoEdit() throws IOException {
		ReloadJob reload = new ReloadJob(job, read(first));
		assertFalse(reload.canApply());
		assertThrows(IllegalStateException.class, reload::apply);
		assertThrows(IllegalStateException.class, reload::undo);
	}
}
