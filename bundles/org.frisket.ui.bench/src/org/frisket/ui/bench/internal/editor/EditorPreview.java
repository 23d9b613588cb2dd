package org.frisket.ui.bench.internal.editor;

import org.eclipse.draw2d.IFigure;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.editparts.LayerManager;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.model.Job;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.JobPreview;
import org.frisket.ui.bench.internal.figures.FlagFigure;
import org.frisket.ui.bench.internal.picture.TriedPicture;

/** What is tried on the job of an editor, as the views see it. */
final class EditorPreview implements JobPreview {

	/** Of what is seen round a place that is looked at closely, each way, in mm. */
	private static final double NEAR = 4;

	private final BenchSurface editor;
	private final TriedJob maker;
	private FlagFigure flag;

	EditorPreview(BenchSurface editor) {
		this.editor = editor;
		tried().addListener(editor::previewChanged);
		maker = new TriedJob(editor.viewer().getControl().getDisplay(), picture -> {
			if (!editor.viewer().getControl().isDisposed()) {
				tried().set(picture);
			}
		});
	}

	private TriedPicture tried() {
		return editor.document().tried();
	}

	@Override
	public void show(Job job) {
		maker.request(job);
	}

	@Override
	public boolean isThere() {
		return tried().isThere();
	}

	@Override
	public boolean isAfter() {
		return tried().isSeen();
	}

	@Override
	public void toggle() {
		tried().toggle();
	}

	@Override
	public void hide() {
		maker.request(null);
		if (editor.viewer().getControl() == null || editor.viewer().getControl().isDisposed()) {
			return;
		}
		unmark();
		tried().drop();
	}

	@Override
	public void mark(Point place, String number, String text) {
		unmark();
		flag = new FlagFigure(editor.zoom(), place, ThemeColour.BENCH_SELECTION, number, text);
		flag.setRaised(true);
		flags().add(flag);
		editor.zoom().reveal(place);
	}

	@Override
	public void unmark() {
		if (flag != null) {
			flags().remove(flag);
			flag = null;
		}
	}

	/** The flag that is planted; null if none is. */
	FlagFigure flag() {
		return flag;
	}

	private IFigure flags() {
		return LayerManager.Helper.find(editor.viewer().getRootEditPart())
				.getLayer(LayerConstants.SCALED_FEEDBACK_LAYER);
	}

	@Override
	public void lookClosely(Point place) {
		editor.zoom().fit(new Bounds(place.x() - NEAR, place.y() - NEAR, place.x() + NEAR, place.y() + NEAR));
	}

	void close() {
		maker.request(null);
	}
}
