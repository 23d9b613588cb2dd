package org.frisket.editing.elements;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.osgi.util.NLS;
import org.frisket.editing.RecordingEdit;
import org.frisket.editing.internal.Targets;
import org.frisket.model.Element;
import org.frisket.model.Ids;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Matrix;

/** Lays the layers of other jobs above those of this one, with ids of this one: what was read from files. */
public final class ImportArt extends RecordingEdit {

	/**
	 * A job to be laid in.
	 *
	 * @param art only its layers are taken; it is copied and stays as it is
	 * @param dx  how far to the right of their old places its elements come to lie, in mm
	 * @param dy  how far down
	 */
	public record Sheet(Job art, double dx, double dy) {

		private boolean isUsable() {
			return Double.isFinite(dx) && Double.isFinite(dy) && !Jobs.elements(art).isEmpty();
		}
	}

	private final Job job;
	private final List<Sheet> sheets;
	private final boolean first;
	private final List<Element> imported = new ArrayList<>();

	/** @param source what the files are called: "ferry.svg" or "3 files" */
	public ImportArt(Job job, List<Sheet> sheets, String source) {
		this(job, sheets, source, false);
	}

	private ImportArt(Job job, List<Sheet> sheets, String source, boolean first) {
		super(NLS.bind(Messages.ImportArt_name, source));
		this.job = job;
		this.first = first;
		this.sheets = sheets.stream()
				.map(sheet -> new Sheet(EcoreUtil.copy(sheet.art()), sheet.dx(), sheet.dy())).toList();
	}

	/** The first thing that is done to a new job: it takes the title of the art too, and loses its empty layers. */
	public static ImportArt intoNew(Job job, Job art, String source) {
		return new ImportArt(job, List.of(new Sheet(art, 0, 0)), source, true);
	}

	@Override
	public boolean canApply() {
		return !sheets.isEmpty() && sheets.stream().allMatch(Sheet::isUsable);
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(job);
	}

	@Override
	protected void change() {
		if (first) {
			job.setTitle(sheets.get(0).art().getTitle());
			job.getLayers().removeIf(layer -> layer.getElements().isEmpty());
		}
		for (Sheet sheet : sheets) {
			for (Element leader : Targets.leaders(Jobs.elements(sheet.art()))) {
				leader.setTransform(leader.getTransform().then(Matrix.translation(sheet.dx(), sheet.dy())));
			}
			List.copyOf(sheet.art().getLayers()).forEach(this::lay);
		}
	}

	private void lay(Layer layer) {
		if (layer.getElements().isEmpty()) {
			return;
		}
		// before they are there, for whoever sees them come asks for their ids
		List<String> ids = Ids.nextElements(job, layer.getElements().size());
		for (int i = 0; i < ids.size(); i++) {
			layer.getElements().get(i).setId(ids.get(i));
		}
		layer.setId(Ids.nextLayer(job));
		imported.addAll(layer.getElements());
		job.getLayers().add(layer);
	}

	/** What was laid in, the lowest first; empty before the edit is applied. */
	public List<Element> imported() {
		return List.copyOf(imported);
	}
}
