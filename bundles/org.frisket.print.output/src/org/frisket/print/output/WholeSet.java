package org.frisket.print.output;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.osgi.util.NLS;
import org.frisket.export.Exporter;
import org.frisket.export.WorkshopSource;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.WholeFile;
import org.frisket.prepare.extension.Contribution;
import org.frisket.prepare.extension.ContributionException;
import org.frisket.print.register.RegisterException;
import org.frisket.toolpath.RunChoices;

/**
 * The files of several sheets, all of them or none: a print that is there while its cuts are not would be cut by
 * what was there before. They are written in a folder of their own beside their places, and brought there when all
 * are whole.
 */
public final class WholeSet {

	private final List<PrintAndCut> sheets;
	private final List<Path> bases;
	private final Contribution<Exporter> format;

	/** @param bases folder and name without ending for each sheet, all in one folder */
	public WholeSet(List<PrintAndCut> sheets, List<Path> bases, Contribution<Exporter> format) {
		this.sheets = List.copyOf(sheets);
		this.bases = List.copyOf(bases);
		this.format = format;
	}

	/** The files that there will be, in the order of the sheets. */
	public List<Path> targets() {
		List<Path> targets = new ArrayList<>();
		for (int i = 0; i < sheets.size(); i++) {
			targets.addAll(sheets.get(i).targets(bases.get(i), format).values());
		}
		return targets;
	}

	/**
	 * Writes them.
	 *
	 * @param options of the format, defaults for what is missing
	 * @throws IOException           if one cannot be written; the message names it
	 * @throws ContributionException if the exporter fails for a reason of its own
	 * @throws RegisterException     if cuts cannot be mapped
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public List<Path> write(Map<String, String> options, WorkshopSource workshop, RunChoices choices, Tolerance tolerance,
			Monitor monitor) throws IOException, ContributionException, RegisterException {
		if (sheets.isEmpty()) {
			return List.of();
		}
		Path folder = bases.get(0).toAbsolutePath().getParent();
		Path apart;
		try {
			apart = Files.createTempDirectory(folder, ".print-and-cut-");
		} catch (IOException e) {
			throw new IOException(folder + ": " + WholeFile.reason(e), e);
		}
		try {
			Map<Path, Path> made = new LinkedHashMap<>();
			for (int i = 0; i < sheets.size(); i++) {
				PrintAndCut sheet = sheets.get(i);
				Map<PrintAndCut.Role, Path> targets = sheet.targets(bases.get(i), format);
				sheet.write(apart.resolve(bases.get(i).getFileName()), format, options, workshop, choices, tolerance,
						monitor.part(i, sheets.size())).forEach((role, file) -> made.put(file, targets.get(role)));
			}
			monitor.check();
			bring(made, apart);
			return List.copyOf(made.values());
		} catch (IOException e) {
			// people know the place a file is for, not where it was made
			throw new IOException(String.valueOf(e.getMessage()).replace(apart.toString(), folder.toString()), e);
		} finally {
			discard(apart);
		}
	}

	/** If one cannot be brought, those before it go back to what they were. */
	private static void bring(Map<Path, Path> made, Path apart) throws IOException {
		Map<Path, Path> before = new LinkedHashMap<>();
		List<Path> brought = new ArrayList<>();
		for (Map.Entry<Path, Path> each : made.entrySet()) {
			Path target = each.getValue();
			try {
				if (Files.isDirectory(target)) {
					throw new IOException(Messages.WholeSet_folder);
				}
				if (Files.exists(target)) {
					Path kept = apart.resolve("before-" + before.size());
					Files.copy(target, kept, StandardCopyOption.COPY_ATTRIBUTES);
					before.put(target, kept);
				}
				move(each.getKey(), target);
				brought.add(target);
			} catch (IOException e) {
				IOException trouble = new IOException(NLS.bind(Messages.WholeSet_notBrought, target, WholeFile.reason(e)), e);
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

	/** @param before null if there was none */
	private static void takeBack(Path file, Path before) throws IOException {
		if (before == null) {
			Files.deleteIfExists(file);
		} else {
			move(before, file);
		}
	}

	private static void move(Path from, Path to) throws IOException {
		try {
			Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
		} catch (AtomicMoveNotSupportedException e) {
			Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
		}
	}

	private static void discard(Path folder) {
		try (var files = Files.list(folder)) {
			for (Path each : files.toList()) {
				Files.delete(each);
			}
			Files.delete(folder);
		} catch (IOException left) {
			// its name says what it was; the first trouble is the one to report
		}
	}
}
