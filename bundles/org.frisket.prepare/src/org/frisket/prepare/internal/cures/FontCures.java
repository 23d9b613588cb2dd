package org.frisket.prepare.internal.cures;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.osgi.util.NLS;
import org.frisket.editing.wording.ChangeWording;
import org.frisket.model.FontRef;
import org.frisket.model.Jobs;
import org.frisket.model.Wording;
import org.frisket.prepare.Finding;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.checks.Cures;
import org.frisket.prepare.checks.Trial;
import org.frisket.typography.FontFace;
import org.frisket.typography.MissingGlyph;
import org.frisket.typography.Setting;
import org.frisket.typography.TextSetter;
import org.frisket.typography.UnreadableFontException;
import org.frisket.typography.source.FontFile;
import org.frisket.typography.source.FontLibrary;
import org.frisket.typography.source.UnknownFontException;

/** Against fonts that are missing, lack characters, or are not those the job was made with. */
public final class FontCures implements Cures {

	/** Enough to choose from. */
	private static final int MOST = 2;
	private static final double ANY_HEIGHT = 10;

	@Override
	public List<Cure> cures(Finding finding, Trial trial) {
		Wording wording = trial.element(finding).filter(Wording.class::isInstance).map(Wording.class::cast).orElse(null);
		if (wording == null) {
			return List.of();
		}
		return switch (finding.id()) {
		case "font-missing" -> otherFonts(finding, trial, wording);
		case "font-differs" -> versionAtHand(finding, trial, wording);
		case "glyph-missing" -> {
			List<Cure> cures = new ArrayList<>(otherFonts(finding, trial, wording));
			withoutMissing(finding, trial, wording).ifPresent(cures::add);
			yield cures;
		}
		default -> List.of();
		};
	}

	/** Fonts that have every character of the wording: those of a like name first, then the first there are. */
	private static List<Cure> otherFonts(Finding finding, Trial trial, Wording wording) {
		record Key(String element) {
		}
		return trial.once(new Key(finding.element()), () -> {
			Map<String, FontRef> found = new LinkedHashMap<>();
			FontLibrary fonts = trial.fonts();
			for (String name : likeNames(wording.getFont(), fonts)) {
				open(fonts, name).filter(face -> CoveringFonts.covers(face, characters(wording))).ifPresent(face -> add(found, face));
			}
			if (found.isEmpty()) {
				new CoveringFonts(fonts, trial.monitor()).first(characters(wording)).ifPresent(face -> add(found, face));
			}
			return found.entrySet().stream().limit(MOST)
					.map(entry -> Cure.of(NLS.bind(Messages.FontCures_font, entry.getKey()), finding.element(), Wording.class,
							w -> ChangeWording.font(w, entry.getValue())))
					.toList();
		});
	}

	private static void add(Map<String, FontRef> found, FontFace face) {
		found.putIfAbsent(face.names().label(), reference(face));
	}

	private static FontRef reference(FontFace face) {
		return Jobs.font(face.family(), face.style(), face.digest(),
				face.source().map(Path::toAbsolutePath).map(Path::toString).orElse(null));
	}

	private static List<String> likeNames(FontRef reference, FontLibrary fonts) {
		if (reference == null || reference.getName() == null) {
			return List.of();
		}
		try {
			fonts.find(reference.getName());
			return List.of();
		} catch (UnknownFontException e) {
			return e.suggestions();
		} catch (UnreadableFontException e) {
			return List.of();
		}
	}

	private static Optional<FontFace> open(FontLibrary fonts, String name) {
		try {
			return Optional.of(fonts.find(name));
		} catch (UnknownFontException | UnreadableFontException e) {
			return Optional.empty();
		}
	}

	private static int[] characters(Wording wording) {
		String text = wording.getText() == null ? "" : wording.getText();
		return text.codePoints().filter(c -> !Character.isWhitespace(c) && !Character.isISOControl(c)).distinct()
				.toArray();
	}

	/** The font the wording is set in now, whatever its digest. */
	private static Optional<FontFace> current(Wording wording, FontLibrary fonts) {
		FontRef reference = wording.getFont();
		if (reference == null || reference.getName() == null) {
			return Optional.empty();
		}
		try {
			if (reference.getFile() != null && Files.isRegularFile(Path.of(reference.getFile()))) {
				return Optional.of(FontFile.read(Path.of(reference.getFile()), reference.getName(), reference.getStyle()));
			}
		} catch (InvalidPathException | UnreadableFontException e) {
			return Optional.empty();
		}
		return open(fonts, reference.getStyle() == null ? reference.getName()
				: reference.getName() + " " + reference.getStyle());
	}

	private static List<Cure> versionAtHand(Finding finding, Trial trial, Wording wording) {
		return current(wording, trial.fonts()).map(face -> {
			FontRef reference = EcoreUtil.copy(wording.getFont());
			reference.setDigest(face.digest());
			return List.of(Cure.of(Messages.FontCures_version, finding.element(), Wording.class,
					w -> ChangeWording.font(w, reference)));
		}).orElse(List.of());
	}

	private static Optional<Cure> withoutMissing(Finding finding, Trial trial, Wording wording) {
		return current(wording, trial.fonts()).flatMap(face -> {
			String text = wording.getText();
			Set<Integer> missing = TextSetter.set(text, face, Setting.ofCapHeight(ANY_HEIGHT), trial.monitor()).missing()
					.stream().map(MissingGlyph::index).collect(Collectors.toSet());
			StringBuilder rest = new StringBuilder();
			for (int i = 0; i < text.length(); i = text.offsetByCodePoints(i, 1)) {
				if (!missing.contains(i)) {
					rest.appendCodePoint(text.codePointAt(i));
				}
			}
			return rest.toString().isBlank() ? Optional.empty()
					: Optional.of(Cure.of(Messages.FontCures_leaveOut, finding.element(), Wording.class,
							w -> ChangeWording.text(w, rest.toString())));
		});
	}
}
