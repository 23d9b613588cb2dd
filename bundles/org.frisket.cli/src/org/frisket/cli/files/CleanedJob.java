package org.frisket.cli.files;

import java.nio.file.Path;
import java.util.List;

import org.frisket.geometry.Outline;
import org.frisket.geometry.PathData;
import org.frisket.geometry.repair.Artwork;
import org.frisket.imports.job.ArtPictures;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;

/** A job of cleaned layers: areas are cut; lines are drawn, so that nothing is cut that bounds no area; pictures are printed. */
final class CleanedJob {

	private CleanedJob() {
	}

	static Job of(Path file, List<CleanedLayer> layers) {
		Job job = Jobs.create("job", ArtFile.title(file));
		for (CleanedLayer cleaned : layers) {
			Artwork artwork = cleaned.artwork();
			if (artwork.areas().isEmpty() && artwork.lines().isEmpty() && cleaned.pictures().isEmpty()) {
				continue;
			}
			Layer layer = Jobs.addLayer(job, cleaned.source().name());
			if (!cleaned.source().colour().isEmpty()) {
				layer.setColour(cleaned.source().colour());
			}
			cleaned.pictures().forEach(picture -> ArtPictures.add(layer, picture));
			for (Artwork.Area area : artwork.areas()) {
				add(layer, cleaned.source().name(), area.outline(), OperationKind.CUT);
			}
			if (!artwork.lines().isEmpty()) {
				add(layer, cleaned.source().name() + " lines", new Outline(artwork.lines()), OperationKind.DRAW);
			}
		}
		return job;
	}

	private static void add(Layer layer, String name, Outline outline, OperationKind kind) {
		Element element = Jobs.addOutline(layer, PathData.format(outline));
		element.setName(name);
		Jobs.addOperation(element, kind);
	}
}
