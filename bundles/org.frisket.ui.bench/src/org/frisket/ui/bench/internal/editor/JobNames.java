package org.frisket.ui.bench.internal.editor;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Wording;
import org.frisket.ui.bench.internal.files.RecentJobs;

/** What to call the file of a job that has none, and where to put it, unless the user knows better. */
public final class JobNames {

	private static final int LONGEST = 60;

	private JobNames() {
	}

	/** A name without an ending: the job's title or its first words, made fit for every file system. */
	public static String fileName(Job job, String fallback) {
		return Stream.concat(Stream.ofNullable(job.getTitle()), words(job)).map(JobNames::fit)
				.filter(name -> !name.isEmpty()).findFirst().orElse(fallback);
	}

	private static Stream<String> words(Job job) {
		return Jobs.elements(job).stream().filter(Wording.class::isInstance).map(Wording.class::cast)
				.map(Wording::getText).filter(text -> text != null).flatMap(String::lines);
	}

	private static String fit(String text) {
		StringBuilder name = new StringBuilder();
		text.strip().codePoints().limit(LONGEST)
				.map(c -> Character.isLetterOrDigit(c) || " -_".indexOf(c) >= 0 ? c : ' ') //$NON-NLS-1$
				.forEach(name::appendCodePoint);
		return name.toString().strip().replaceAll(" +", " "); //$NON-NLS-1$ //$NON-NLS-2$
	}

	/** Where the latest job lies, or the user's home. */
	public static Path folder() {
		return RecentJobs.shared().all().stream().map(Path::getParent)
				.filter(folder -> folder != null && Files.isDirectory(folder)).findFirst()
				.orElseGet(() -> Path.of(System.getProperty("user.home"))); //$NON-NLS-1$
	}
}
