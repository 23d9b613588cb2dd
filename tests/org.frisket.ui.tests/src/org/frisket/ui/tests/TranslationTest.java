package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

/** Every text of the screen stands in a file of its own, is used, and is there in German too. Reads the sources. */
class TranslationTest {

	private static final String ENDING = ".properties";
	private static final String GERMAN = "_de" + ENDING;
	private static final Pattern PLACEHOLDER = Pattern.compile("\\{\\d+\\}");
	private static final Pattern FIELD = Pattern.compile("public static String (\\w+);");
	private static final Pattern LATER_TEXT = Pattern.compile("\"%([\\w.]+)\"|>%([\\w.]+)<|: %([\\w.]+)");

	private final List<String> wrong = new ArrayList<>();

	/** Of the bundles whose words are seen on the screen. */
	private static List<Path> files() throws IOException {
		List<Path> files = new ArrayList<>();
		for (Path bundle : bundles()) {
			for (String part : List.of("src", "OSGI-INF")) {
				if (Files.isDirectory(bundle.resolve(part))) {
					try (Stream<Path> all = Files.walk(bundle.resolve(part))) {
						all.filter(file -> file.toString().endsWith(ENDING) && !file.toString().endsWith(GERMAN))
								.sorted().forEach(files::add);
					}
				}
			}
		}
		assertFalse(files.isEmpty());
		return files;
	}

	private static List<Path> bundles() throws IOException {
		try (Stream<Path> all = Files.list(Path.of("..", "..", "bundles").toRealPath())) {
			return all.filter(bundle -> bundle.getFileName().toString().matches("org\\.frisket\\.(ui|app|editing|help|prepare|studio|page|print|imports|export|material|sheets|run|orders)(\\..*)?"))
					.sorted().toList();
		}
	}

	private static Properties read(Path file) throws IOException {
		Properties texts = new Properties();
		try (InputStream in = Files.newInputStream(file)) {
			texts.load(in);
		}
		return texts;
	}

	private static Path german(Path file) {
		String name = file.getFileName().toString();
		return file.resolveSibling(name.substring(0, name.length() - ENDING.length()) + GERMAN);
	}

	private void compare(Path file, Set<String> expected, Set<String> found, String what) {
		Set<String> missing = new TreeSet<>(expected);
		missing.removeAll(found);
		Set<String> extra = new TreeSet<>(found);
		extra.removeAll(expected);
		if (!missing.isEmpty() || !extra.isEmpty()) {
			wrong.add(file + ": " + what + ": missing " + missing + ", too many " + extra);
		}
	}

	private void assertNothingWrong() {
		assertEquals("", String.join("\n", wrong));
	}

	@Test
	void everyTextIsThereInGerman() throws IOException {
		for (Path file : files()) {
			if (Files.exists(german(file))) {
				compare(german(file), read(file).stringPropertyNames(), read(german(file)).stringPropertyNames(),
						"keys");
			} else {
				wrong.add(german(file) + " is missing");
			}
		}
		assertNothingWrong();
	}

	@Test
	void germanTextsHaveTheSamePlaceholdersAndSaySomething() throws IOException {
		for (Path file : files()) {
			if (Files.exists(german(file))) {
				Properties german = read(german(file));
				read(file).forEach((key, text) -> {
					String translated = german.getProperty(key.toString(), "");
					compare(german(file), placeholders(text.toString()), placeholders(translated), key.toString());
					if (translated.isBlank() || translated.contains("'")) {
						wrong.add(german(file) + ": " + key + ": “" + translated + "”");
					}
				});
			}
		}
		assertNothingWrong();
	}

	private static Set<String> placeholders(String text) {
		return PLACEHOLDER.matcher(text).results().map(result -> result.group())
				.collect(Collectors.toCollection(TreeSet::new));
	}

	@Test
	void everyMessageHasItsFieldAndIsUsed() throws IOException {
		for (Path file : files()) {
			Path fields = file.resolveSibling("Messages.java");
			if (Files.exists(fields)) {
				Set<String> keys = read(file).stringPropertyNames();
				compare(file, FIELD.matcher(Files.readString(fields)).results().map(result -> result.group(1))
						.collect(Collectors.toSet()), keys, "fields");
				String code = code(file.getParent(), fields);
				keys.stream().filter(key -> !Pattern.compile("Messages\\." + key + "\\b").matcher(code).find())
						.forEach(key -> wrong.add(file + ": " + key + " is not used"));
			}
		}
		assertNothingWrong();
	}

	private static String code(Path folder, Path without) throws IOException {
		StringBuilder code = new StringBuilder();
		try (Stream<Path> all = Files.list(folder)) {
			for (Path each : all.filter(file -> file.toString().endsWith(".java") && !file.equals(without)).toList()) {
				code.append(Files.readString(each));
			}
		}
		return code.toString();
	}

	@Test
	void everyTextOfAManifestIsThereAndUsed() throws IOException {
		for (Path bundle : bundles()) {
			Path file = bundle.resolve("OSGI-INF/l10n/bundle" + ENDING);
			Set<String> used = new TreeSet<>();
			for (String source : List.of("META-INF/MANIFEST.MF", "plugin.xml")) {
				if (Files.exists(bundle.resolve(source))) {
					Matcher matcher = LATER_TEXT.matcher(Files.readString(bundle.resolve(source)));
					while (matcher.find()) {
						used.add(Stream.of(matcher.group(1), matcher.group(2), matcher.group(3))
								.filter(key -> key != null).findFirst().orElseThrow());
					}
				}
			}
			compare(file, used, Files.exists(file) ? read(file).stringPropertyNames() : Set.of(), "keys");
		}
		assertNothingWrong();
	}
}
