package org.frisket.prepare.internal.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Point;
import org.frisket.model.Flow;
import org.frisket.model.FontRef;
import org.frisket.model.Wording;
import org.frisket.prepare.Figures;
import org.frisket.prepare.Severity;
import org.frisket.prepare.internal.FontResolver;
import org.frisket.prepare.internal.Shape;
import org.frisket.prepare.wording.WordingPath;
import org.frisket.typography.FeatureList;
import org.frisket.typography.FontFace;
import org.frisket.typography.Nudge;
import org.frisket.typography.TextSpan;
import org.frisket.typography.face.AxisSettings;

/**
 * What a wording is set with besides its own figures.
 *
 * @param face     at the wording's axes
 * @param path     that it runs along, in the job's frame
 * @param remarks  on what of it cannot be used
 */
public record WordingSource(Wording wording, FontFace face, FeatureList features, List<TextSpan> spans,
		List<Nudge> nudges, Optional<Contour> path, List<Shape.Remark> remarks) {

	/** @param remarks on the font */
	public static WordingSource of(Wording wording, FontFace face, List<Shape.Remark> remarks,
			Function<FontRef, FontResolver.Resolved> fonts) {
		List<Shape.Remark> all = new ArrayList<>(remarks);
		FontFace varied = varied(face, wording.getAxes(), all);
		FeatureList features = features(wording.getFeatures(), all);
		return new WordingSource(wording, varied, features, spans(wording, fonts, all), nudges(wording, all),
				path(wording, all), List.copyOf(all));
	}

	/** A named style keeps its values on the axes that are not spoken of. */
	private static FontFace varied(FontFace face, String axes, List<Shape.Remark> remarks) {
		if (axes == null || axes.isBlank()) {
			return face;
		}
		try {
			SortedMap<String, Double> values = new TreeMap<>(face.settings().values());
			values.putAll(AxisSettings.parse(axes).values());
			return face.at(new AxisSettings(values));
		} catch (IllegalArgumentException e) {
			remarks.add(remark("axes-unreadable", NLS.bind(Messages.WordingSource_axes, e.getMessage()),
					Messages.WordingSource_axesCure));
			return face;
		}
	}

	private static FeatureList features(String text, List<Shape.Remark> remarks) {
		try {
			return FeatureList.parse(text == null ? "" : text);
		} catch (IllegalArgumentException e) {
			remarks.add(remark("features-unreadable",
					NLS.bind(Messages.WordingSource_features, e.getMessage()),
					Messages.WordingSource_featuresCure));
			return FeatureList.NONE;
		}
	}

	private static List<TextSpan> spans(Wording wording, Function<FontRef, FontResolver.Resolved> fonts,
			List<Shape.Remark> remarks) {
		List<TextSpan> spans = new ArrayList<>();
		for (org.frisket.model.TextSpan span : wording.getSpans()) {
			boolean overlaps = spans.stream().anyMatch(s -> s.start() < span.getEnd() && span.getStart() < s.end());
			if (overlaps || span.getStart() < 0 || span.getEnd() < span.getStart() || span.getHeight() < 0) {
				remarks.add(remark("span-unusable", NLS.bind(Messages.WordingSource_span,
						span.getStart() + 1, span.getEnd()), Messages.WordingSource_spanCure));
				continue;
			}
			Optional<FontFace> face = Optional.empty();
			if (span.getFont() != null) {
				FontResolver.Resolved resolved = fonts.apply(span.getFont());
				face = resolved.face();
				remarks.addAll(resolved.remarks());
			}
			OptionalDouble height = span.getHeight() > 0 ? OptionalDouble.of(span.getHeight()) : OptionalDouble.empty();
			spans.add(new TextSpan(span.getStart(), span.getEnd(), face, height,
					features(span.getFeatures(), remarks)));
		}
		return spans;
	}

	private static List<Nudge> nudges(Wording wording, List<Shape.Remark> remarks) {
		List<Nudge> nudges = new ArrayList<>();
		for (org.frisket.model.Nudge nudge : wording.getNudges()) {
			if (nudge.getIndex() < 0 || !(nudge.getScale() > 0)) {
				remarks.add(remark("nudge-unusable",
						NLS.bind(Messages.WordingSource_scale, nudge.getIndex() + 1, Figures.number(nudge.getScale(), 3)),
						Messages.WordingSource_scaleCure));
				continue;
			}
			nudges.add(new Nudge(nudge.getIndex(), nudge.getDx(), nudge.getDy(), nudge.getTurn(), nudge.getScale()));
		}
		return nudges;
	}

	private static Optional<Contour> path(Wording wording, List<Shape.Remark> remarks) {
		if (wording.getFlow() != Flow.PATH) {
			return Optional.empty();
		}
		Optional<Contour> path = WordingPath.contour(wording);
		if (path.isEmpty()) {
			remarks.add(remark("path-missing", Messages.WordingSource_noPath,
					Messages.WordingSource_noPathCure));
		}
		return path;
	}

	private static Shape.Remark remark(String id, String message, String cure) {
		return new Shape.Remark(id, Severity.BLOCKING, Point.ORIGIN, message, cure);
	}
}
