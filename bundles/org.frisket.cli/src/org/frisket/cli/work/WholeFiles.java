package org.frisket.cli.work;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.frisket.cli.line.Refusal;
import org.frisket.model.WholeFile;
import org.frisket.prepare.extension.ContributionException;

/**
 * The files one call writes, all of them or none: of what was refused, nobody is to find a half. Several are made in a
 * folder apart and brought to their places when all are whole.
 */
public final class WholeFiles {

	/** What makes a file at the place it is told. */
	@FunctionalInterface
	public interface Maker {

		void write(Path file) throws IOException, ContributionException;
	}

	private final Map<Path, Maker> files = new LinkedHashMap<>();

	/** @return this, for more */
	public WholeFiles add(Path target, Maker maker) {
		files.put(target, maker);
		return this;
	}

	/** The files that there will be. */
	public List<Path> targets() {
		return List.copyOf(files.keySet());
	}

	/** @throws Refusal if one cannot be written, which it names; then all places hold what they held */
	public void write() throws Refusal {
		try {
			if (files.size() == 1) {
				Map.Entry<Path, Maker> only = files.entrySet().iterator().next();
				only.getValue().write(only.getKey());
			} else if (!files.isEmpty()) {
				writeApart();
			}
		} catch (IOException | ContributionException | IllegalArgumentException e) {
			throw new Refusal(e);
		}
	}

	private void writeApart() throws IOException, ContributionException {
		Path apart = Files.createTempDirectory("frisket-");
		try {
			Map<Path, Path> made = new LinkedHashMap<>();
			for (Map.Entry<Path, Maker> file : files.entrySet()) {
				made.put(file.getKey(), make(file.getKey(), file.getValue(),
						Files.createDirectory(apart.resolve(Integer.toString(made.size())))));
			}
			bring(made, apart);
		} finally {
			discard(apart);
		}
	}

	private static Path make(Path target, Maker maker, Path folder) throws IOException, ContributionException {
		Path file = folder.resolve(target.getFileName());
		try {
			maker.write(file);
			return file;
		} catch (IOException e) {
			// people know the place a file is for, not where it was made
			throw new IOException(String.valueOf(e.getMessage()).replace(file.toString(), target.toString()), e);
		}
	}

	/** If one cannot be brought, those before it become what they were. */
	private static void bring(Map<Path, Path> made, Path apart) throws IOException {
		Map<Path, Path> before = new LinkedHashMap<>();
		List<Path> brought = new ArrayList<>();
		for (Map.Entry<Path, Path> each : made.entrySet()) {
			Path target = each.getKey();
			try {
				if (Files.isRegularFile(target)) {
					before.put(target, Files.copy(target, apart.resolve("before-" + before.size())));
				}
				copy(each.getValue(), target);
				brought.add(target);
			} catch (IOException e) {
				IOException trouble = new IOException("cannot write " + target + ": " + WholeFile.reason(e), e);
				for (Path there : brought) {
					try {
						takeBack(there, before.get(there));
					} catch (IOException worse) {
						// the others go back all the same, and the first trouble is the one to report
						trouble.addSuppressed(worse);
					}
				}
				throw trouble;
			}
		}
	}

	private static void takeBack(Path file, Path before) throws IOException {
		if (before == null) {
			Files.delete(file);
		} else {
			copy(before, file);
		}
	}

	private static void copy(Path from, Path to) throws IOException {
		WholeFile.write(out -> Files.copy(from, out), to);
	}

	private static void discard(Path folder) {
		try (Stream<Path> all = Files.walk(folder)) {
			for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
				Files.delete(each);
			}
		} catch (IOException left) {
			// it lies where things are thrown away; the first trouble is the one to report
		}
	}
}
