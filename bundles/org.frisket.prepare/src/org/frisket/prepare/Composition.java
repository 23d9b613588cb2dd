package org.frisket.prepare;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Consumer;

import org.frisket.geometry.Length;
import org.frisket.model.Alignment;
import org.frisket.model.CornerJoin;
import org.frisket.model.FontRef;
import org.frisket.model.HoleRule;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Mat;
import org.frisket.model.OperationKind;
import org.frisket.model.PenStyle;
import org.frisket.model.PreviewColours;
import org.frisket.model.Wording;
import org.frisket.typography.FontFace;

/**
 * A wording and what goes with it, enough to make a job of: the wording on a layer of its own and a layer behind it for
 * each mat, the widest at the very back.
 *
 * @param text      the words; line ends part lines
 * @param face      the font
 * @param height    of a capital H in mm
 * @param alignment of several lines
 * @param touch     overlap in mm by which neighbours are joined; empty leaves the letters apart
 * @param mats      distance of each mat from the wording in mm
 * @param corners   of the mats
 * @param holes     of the mats
 * @param operation what is done with wording and mats
 */
public record Composition(String text, FontFace face, double height, Alignment alignment, OptionalDouble touch,
		List<Double> mats, CornerJoin corners, HoleRule holes, OperationKind operation) {

	private static final int TITLE_LENGTH = 60;

	public Composition {
		mats = List.copyOf(mats);
	}

	/** With mats of round corners that keep their holes. */
	public Composition(String text, FontFace face, double height, Alignment alignment, OptionalDouble touch,
			List<Double> mats, OperationKind operation) {
		this(text, face, height, alignment, touch, mats, CornerJoin.ROUND, HoleRule.KEEP, operation);
	}

	/** A new job; the same composition always makes the same one. */
	public Job toJob() {
		return toJob(wording -> {
		});
	}

	/**
	 * A new job whose wording has more decided about it. If those make it lines for the pen, or its font is one of
	 * single lines, it is drawn, whatever is done with the mats.
	 */
	public Job toJob(Consumer<Wording> decisions) {
		Job job = Jobs.create("job", title());
		List<Double> fromTheBack = mats.stream().sorted((a, b) -> Double.compare(b, a)).toList();
		List<Layer> matLayers = new ArrayList<>();
		for (int i = 0; i < fromTheBack.size(); i++) {
			Layer layer = Jobs.addLayer(job, "Mat " + Length.text(fromTheBack.get(i), 2));
			layer.setColour(PreviewColours.mat(fromTheBack.size() - 1 - i));
			matLayers.add(layer);
		}
		Layer front = Jobs.addLayer(job, "Wording");
		front.setColour(PreviewColours.WORDING);
		Wording wording = Jobs.addWording(front, text, height);
		wording.setName(title());
		wording.setFont(font());
		wording.setAlignment(alignment);
		wording.setJoined(touch.isPresent());
		touch.ifPresent(wording::setTouch);
		decisions.accept(wording);
		Jobs.addOperation(wording, wording.getPenStyle() == PenStyle.OUTLINE && !face.isStroke() ? operation : OperationKind.DRAW);
		for (int i = 0; i < matLayers.size(); i++) {
			Mat mat = Jobs.addMat(matLayers.get(i), fromTheBack.get(i), List.of(wording));
			mat.setName(matLayers.get(i).getName());
			mat.setCorners(corners);
			mat.setHoles(holes);
			Jobs.addOperation(mat, operation);
		}
		return job;
	}

	private String title() {
		String line = text.lines().filter(l -> !l.isBlank()).findFirst().orElse("").strip();
		int end = Math.min(line.length(), TITLE_LENGTH);
		return end < line.length() && Character.isHighSurrogate(line.charAt(end - 1)) ? line.substring(0, end - 1)
				: line.substring(0, end);
	}

	private FontRef font() {
		return Jobs.font(face.family(), face.style(), face.digest(),
				face.source().map(Path::toAbsolutePath).map(Path::toString).orElse(null));
	}
}
