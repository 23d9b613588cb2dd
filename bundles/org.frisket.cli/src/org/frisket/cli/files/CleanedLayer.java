package org.frisket.cli.files;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.repair.Artwork;
import org.frisket.geometry.repair.Mend;
import org.frisket.geometry.repair.Mended;
import org.frisket.geometry.repair.Movement;
import org.frisket.geometry.repair.RepairCourse;
import org.frisket.imports.ImportedLayer;
import org.frisket.imports.ImportedShape;
import org.frisket.prepare.extension.ContributionException;
import org.frisket.prepare.repair.RepairSteps;

/**
 * A layer of a file after its repair.
 *
 * @param pictures those on it, which are taken over as they are
 */
record CleanedLayer(ImportedLayer source, Mended mended, Movement movement, Tolerance tolerance,
		List<ImportedShape.Picture> pictures) {

	Artwork artwork() {
		return mended.artwork();
	}

	List<Mend> mends() {
		return mended.mends();
	}

	boolean isWithinTolerance() {
		return movement.isWithin(tolerance);
	}

	static CleanedLayer of(ImportedLayer layer, RepairCourse course, Tolerance tolerance) throws ContributionException {
		List<Artwork.Area> areas = new ArrayList<>();
		List<Contour> lines = new ArrayList<>();
		List<ImportedShape.Picture> pictures = new ArrayList<>();
		for (ImportedShape shape : layer.shapes()) {
			if (shape instanceof ImportedShape.Area area) {
				areas.add(new Artwork.Area(area.outline(), area.rule()));
			} else if (shape instanceof ImportedShape.Lines more) {
				lines.addAll(more.outline().contours());
			} else if (shape instanceof ImportedShape.Picture picture) {
				pictures.add(picture);
			}
		}
		RepairCourse.Proved proved = RepairSteps.prove(course, new Artwork(areas, lines), tolerance, Monitor.NONE);
		return new CleanedLayer(layer, proved.mended(), proved.movement(), tolerance, pictures);
	}
}
