package org.frisket.export.preset;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.osgi.util.NLS;
import org.frisket.model.WholeFile;

/** The presets in a folder, a file for each. A file that cannot be read is told of, and the others hold. */
public final class Presets {

	/** Of their files. */
	public static final String ENDING = ".preset";

	/** Nobody writes more than this into one by hand or by form, in bytes. */
	private static final long LARGEST = 100_000;
	private static final int LONGEST_FILE = 40;

	private final Path folder;
	private final Map<Path, Preset> presets = new LinkedHashMap<>();
	private final List<String> problems = new ArrayList<>();

	private Presets(Path folder) {
		this.folder = folder;
	}

	/** Those in a folder, which need not be there. */
	public static Presets in(Path folder) {
		Presets presets = new Presets(folder);
		try (Stream<Path> files = Files.list(folder)) {
			files.filter(file -> file.getFileName().toString().endsWith(ENDING) && Files.isRegularFile(file)).sorted()
					.forEach(presets::read);
		} catch (NoSuchFileException none) {
			// none was ever saved
		} catch (IOException e) {
			presets.problems.add(NLS.bind(Messages.Presets_unreadable, folder, WholeFile.reason(e)));
		}
		return presets;
	}

	private void read(Path file) {
		try {
			if (Files.size(file) > LARGEST) {
				throw new IllegalArgumentException(Messages.Presets_large);
			}
			Preset preset = PresetText.read(Files.readString(file));
			if (find(preset.name()).isPresent()) {
				throw new IllegalArgumentException(NLS.bind(Messages.Presets_twice, preset.name()));
			}
			presets.put(file, preset);
		} catch (CharacterCodingException e) {
			problems.add(NLS.bind(Messages.Presets_unreadable, file, Messages.Presets_notUtf8));
		} catch (IOException e) {
			problems.add(NLS.bind(Messages.Presets_unreadable, file, WholeFile.reason(e)));
		} catch (IllegalArgumentException e) {
			problems.add(NLS.bind(Messages.Presets_unreadable, file, e.getMessage()));
		}
	}

	/** By name. */
	public List<Preset> all() {
		return presets.values().stream().sorted(Comparator.comparing(Preset::name)).toList();
	}

	/** The preset of this name, whatever its case. */
	public Optional<Preset> find(String name) {
		return presets.values().stream().filter(preset -> preset.name().equalsIgnoreCase(name.strip())).findFirst();
	}

	/** Files that could not be read, with the line and the reason. */
	public List<String> problems() {
		return List.copyOf(problems);
	}

	/**
	 * Keeps a preset, in place of one of the same name if there is one.
	 *
	 * @throws IOException with a message that names the file, if it cannot be written
	 */
	public void save(Preset preset) throws IOException {
		Path file = fileOf(preset.name()).orElseGet(() -> freeFile(preset.name()));
		try {
			Files.createDirectories(folder);
			WholeFile.write(out -> out.write(PresetText.of(preset).getBytes(StandardCharsets.UTF_8)), file);
		} catch (IOException e) {
			throw new IOException(NLS.bind(Messages.Presets_notSaved, file, WholeFile.reason(e)), e);
		}
		presets.put(file, preset);
	}

	/**
	 * Removes a preset; nothing happens if there is none of this name.
	 *
	 * @throws IOException with a message that names the file, if it cannot be removed
	 */
	public void delete(String name) throws IOException {
		Optional<Path> file = fileOf(name);
		if (file.isPresent()) {
			try {
				Files.deleteIfExists(file.get());
			} catch (IOException e) {
				throw new IOException(NLS.bind(Messages.Presets_notDeleted, file.get(), WholeFile.reason(e)), e);
			}
			presets.remove(file.get());
		}
	}

	private Optional<Path> fileOf(String name) {
		return presets.entrySet().stream().filter(each -> each.getValue().name().equalsIgnoreCase(name.strip()))
				.map(Map.Entry::getKey).findFirst();
	}

	/** A name that says which preset it is to whoever looks into the folder, and is not taken. */
	private Path freeFile(String name) {
		String plain = name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
		String start = plain.isEmpty() ? "preset" : plain.substring(0, Math.min(LONGEST_FILE, plain.length()));
		for (int i = 1;; i++) {
			Path file = folder.resolve(start + (i == 1 ? "" : "-" + i) + ENDING);
			if (!Files.exists(file)) {
				return file;
			}
		}
	}
}
