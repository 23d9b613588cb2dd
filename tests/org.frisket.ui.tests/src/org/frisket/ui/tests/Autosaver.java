package org.frisket.ui.tests;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Semaphore;

import org.frisket.model.FrisketFactory;
import org.frisket.model.Job;
import org.frisket.ui.bench.internal.files.Autosave;
import org.frisket.ui.bench.internal.files.RecoveryStore;
import org.frisket.ui.bench.internal.files.Unsaved;

/**
 * A program of its own on whose bench two jobs are worked on without a pause, one of the order book and one that has no
 * name yet. It says which edit of which job was autosaved, until it is killed.
 */
final class Autosaver {

	/** In the order in which it tells of them. */
	static final List<Unsaved> JOBS = List.of(Unsaved.at("order 31", "revision 7"), Unsaved.untitled(3));

	private final Unsaved unsaved;
	private final Semaphore news = new Semaphore(0);
	private final Autosave autosave;

	private Autosaver(RecoveryStore store, Unsaved unsaved) {
		this.unsaved = unsaved;
		autosave = new Autosave(store, news::release, () -> base(unsaved));
	}

	/** The job as it was taken out of the order book. */
	static byte[] base(Unsaved unsaved) {
		return unsaved.place().isEmpty() ? new byte[0] : "as it was ".repeat(5000).getBytes(StandardCharsets.UTF_8);
	}

	/** In turn so many that writing takes a while, and so few that it is mostly making and moving files. */
	static int words(long edit) {
		return edit % 2 == 0 ? 50_000 : 20;
	}

	/** @param arguments folder of the copies, number of the first edit */
	public static void main(String[] arguments) throws Exception {
		RecoveryStore store = new RecoveryStore(Path.of(arguments[0]));
		List<Autosaver> all = new ArrayList<>();
		JOBS.forEach(unsaved -> all.add(new Autosaver(store, unsaved)));
		PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
		for (long edit = Long.parseLong(arguments[1]);; edit++) {
			for (Autosaver each : all) {
				each.autosave.changed(each.unsaved, job(edit), 0);
			}
			for (Autosaver each : all) {
				each.news.acquire();
				if (each.autosave.trouble() != null) {
					throw new IllegalStateException(each.autosave.trouble());
				}
				out.println(JOBS.indexOf(each.unsaved) + " " + edit);
			}
		}
	}

	private static Job job(long edit) {
		Job job = FrisketFactory.INSTANCE.createJob();
		job.setId("ferry-banner");
		job.setTitle("Ferry banner");
		job.setNotes(edit + " " + "wind ".repeat(words(edit)));
		return job;
	}
}
