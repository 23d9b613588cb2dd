package org.frisket.imports.job;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.imports.ImportedArt;
import org.frisket.imports.ImportedLayer;
import org.frisket.imports.ImportedShape;
import org.frisket.imports.Remark;
import org.frisket.model.Ids;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.prepare.extension.ContributionException;

/**
 * Makes a job of art: its layers become layers, areas and lines become outlines with the operations of the rules, and
 * pictures become pictures, all under the names that they have in the file. The same art makes the same job.
 */
public final class ArtTaker {

	private final ArtRules rules;
	private final Tolerance tolerance;

	public ArtTaker(ArtRules rules, Tolerance tolerance) {
		this.rules = rules;
		this.tolerance = tolerance;
	}

	/**
	 * @param title of the job
	 * @throws ContributionException if a step of repair fails; the message names it and its bundle
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public TakenArt take(String title, ImportedArt art, Monitor monitor) throws ContributionException {
		Job job = Jobs.create("job", title);
		List<TakenArt.Layer> layers = new ArrayList<>();
		List<Remark> remarks = new ArrayList<>(art.remarks());
		for (ImportedLayer source : art.layers()) {
			monitor.check();
			monitor.worked((double) layers.size() / art.layers().size());
			layers.add(layer(job, source, monitor, remarks));
		}
		// all at once, for each asks all that are there
		Ids.complete(job);
		return new TakenArt(job, layers, remarks);
	}

	private TakenArt.Layer layer(Job job, ImportedLayer source, Monitor monitor, List<Remark> remarks)
			throws ContributionException {
		Layer layer = Jobs.addLayer(job, source.name());
		if (!source.colour().isEmpty()) {
			layer.setColour(source.colour());
		}
		TakenLayer taken = new TakenLayer(layer, rules, tolerance, monitor);
		List<ImportedShape.Lines> lines = new ArrayList<>();
		for (ImportedShape shape : source.shapes()) {
			monitor.check();
			if (shape instanceof ImportedShape.Area area) {
				taken.area(area);
			} else if (shape instanceof ImportedShape.Lines more) {
				lines.add(more);
			} else if (shape instanceof ImportedShape.Picture picture
					&& !ArtPictures.add(layer, picture, rules.pictures())) {
				remarks.add(new Remark(source.name(), NLS.bind(Messages.ArtTaker_flatPicture, picture.name())));
			}
		}
		taken.lines(lines);
		if (layer.getElements().isEmpty()) {
			job.getLayers().remove(layer);
		}
		return taken.told(source.name());
	}
}
