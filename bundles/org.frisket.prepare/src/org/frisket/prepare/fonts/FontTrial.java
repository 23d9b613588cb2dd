package org.frisket.prepare.fonts;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.osgi.util.NLS;
import org.frisket.editing.Edit;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Element;
import org.frisket.model.FontRef;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.model.PenStyle;
import org.frisket.model.Wording;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.checks.LayerLimits;
import org.frisket.prepare.checks.Limits;
import org.frisket.prepare.checks.StockLimits;
import org.frisket.typography.FontFace;
import org.frisket.typography.MissingGlyph;
import org.frisket.typography.Setting;
import org.frisket.typography.TextSetter;
import org.frisket.typography.UnreadableFontException;
import org.frisket.typography.source.FontEntry;
import org.frisket.typography.source.FontLibrary;
import org.frisket.typography.source.FontSource;

/**
 * Tries fonts on a copy of a wording, with all that is done to its letters, and says of each whether it could be cut
 * from the stock of its layer. It is made while the job stands still; after that it may be asked on any thread.
 */
public final class FontTrial {

	private final List<Element> elements;
	private final BiFunction<Wording, FontRef, Edit> setting;
	private final Limits limits;
	private final Tolerance tolerance;

	/**
	 * @param wording in a layer
	 * @param setting how it, or some of its letters, get a font; applied to copies only
	 */
	public FontTrial(Wording wording, BiFunction<Wording, FontRef, Edit> setting, StockLimits stocks,
			Tolerance tolerance) {
		this.setting = setting;
		this.tolerance = tolerance;
		limits = LayerLimits.byStock(stocks).of(wording);
		List<Element> originals = new ArrayList<>(List.of(wording));
		Optional.ofNullable(wording.getPath()).ifPresent(originals::add);
		elements = copies(originals);
		Wording copy = (Wording) elements.get(0);
		copy.getOperations().clear();
		Jobs.addOperation(copy, OperationKind.CUT);
	}

	private static List<Element> copies(Collection<Element> elements) {
		return new ArrayList<>(EcoreUtil.copyAll(elements));
	}

	/** @throws java.util.concurrent.CancellationException if the monitor cancels */
	public FontVerdict of(FontEntry font, Monitor monitor) {
		monitor.check();
		FontFace face;
		try {
			face = font.open();
		} catch (UnreadableFontException e) {
			return FontVerdict.unfit(Messages.FontVerdict_unreadable);
		}
		Wording original = (Wording) elements.get(0);
		if (face.isStroke() || original.getPenStyle() != PenStyle.OUTLINE) {
			return FontVerdict.drawOnly(face, original.getHeight());
		}
		Optional<String> lacking = lacking(original, face, monitor);
		if (lacking.isPresent()) {
			return FontVerdict.unfit(face, NLS.bind(Messages.FontVerdict_lacks, lacking.get()));
		}
		Job job = Jobs.create("trial", "trial");
		Layer layer = Jobs.addLayer(job, "trial");
		layer.getElements().addAll(copies(elements));
		Wording wording = (Wording) layer.getElements().get(0);
		setting.apply(wording, Jobs.font(font.family(), font.style(), null, null)).apply();
		JobPreparer preparer = new JobPreparer(library(font, face));
		PreparedElement prepared = preparer.prepare(job, tolerance, monitor).element(wording.getId()).orElseThrow();
		return preparer.fitness(prepared, limits, tolerance, monitor)
				.map(fitness -> FontVerdict.measured(face, fitness, limits, grows(wording)))
				.orElseGet(() -> FontVerdict.unfit(face, Messages.FontVerdict_nothing));
	}

	private static Optional<String> lacking(Wording wording, FontFace face, Monitor monitor) {
		String text = wording.getText() == null ? "" : wording.getText();
		Optional<String> character = text.codePoints().filter(c -> !Character.isWhitespace(c) && !face.covers(c))
				.mapToObj(Character::toString).findFirst();
		// only shaping knows of what stands for nothing, such as marks that join the letter before them
		return character.isEmpty() ? character
				: TextSetter.set(text, face, Setting.ofCapHeight(1), monitor).missing().stream().findFirst()
						.map(MissingGlyph::label);
	}

	/** What is given in mm of its own stays as it is when the height is changed. */
	private static boolean grows(Wording wording) {
		return wording.getEmbolden() == 0 && !wording.isJoined() && wording.getTracking() == 0
				&& wording.getStencil() == 0 && wording.getBars().isEmpty() && !wording.isTieMarks()
				&& wording.getBridges().isEmpty() && wording.getIslands().isEmpty();
	}

	/** The font first, and those at hand for letters that keep theirs. */
	private static FontLibrary library(FontEntry font, FontFace face) {
		FontEntry open = new FontEntry(font.names(), font.place(), () -> face, font::digest);
		List<FontSource> sources = new ArrayList<>();
		sources.add(new FontSource() {

			@Override
			public String id() {
				return "trial";
			}

			@Override
			public List<FontEntry> fonts(Monitor monitor) {
				return List.of(open);
			}
		});
		sources.addAll(FontLibraries.installed().sources());
		return new FontLibrary(sources);
	}
}
