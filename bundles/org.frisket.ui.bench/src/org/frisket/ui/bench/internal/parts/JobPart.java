package org.frisket.ui.bench.internal.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;

import org.eclipse.draw2d.IFigure;
import org.eclipse.emf.common.notify.Adapter;
import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.impl.AdapterImpl;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.Request;
import org.eclipse.gef.editparts.AbstractGraphicalEditPart;
import org.frisket.geometry.Bounds;
import org.frisket.model.Element;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.impl.FrisketPackageImpl;
import org.frisket.prepare.Finding;
import org.frisket.ui.bench.internal.bridges.BridgeMode;
import org.frisket.ui.bench.internal.canvas.BenchRootPart;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.editor.BenchDocument;
import org.frisket.ui.bench.internal.figures.FlagFigure;
import org.frisket.ui.bench.internal.figures.SheetFigure;
import org.frisket.ui.bench.internal.looks.Looks;
import org.frisket.ui.bench.internal.picture.JobPicture;
import org.frisket.ui.bench.internal.tools.MarqueeTracker;
import org.frisket.ui.bench.internal.tools.PanTracker;
import org.frisket.ui.bench.internal.typing.Typing;

/** The job: the sheet, and on it the elements that are shown, the lowest first. */
public final class JobPart extends AbstractGraphicalEditPart {

	private final BenchDocument document;
	private final Runnable pictureListener = this::pictureMade;
	private final Adapter structure = new AdapterImpl() {
		@Override
		public void notifyChanged(Notification change) {
			if (!change.isTouch()) {
				unfollow();
				follow();
				refreshAll();
			}
		}
	};
	private final Adapter sight = new AdapterImpl() {
		@Override
		public void notifyChanged(Notification change) {
			if (!change.isTouch() && change.getFeature() == FrisketPackageImpl.Literals.ELEMENT__VISIBLE) {
				refreshAll();
			}
		}
	};
	private final List<Layer> followed = new ArrayList<>();
	private final List<Element> watched = new ArrayList<>();
	private FindingFlags flags;
	private FlagPointer flagPointer;

	public JobPart(BenchDocument document) {
		this.document = document;
		setModel(document);
	}

	public BenchDocument document() {
		return document;
	}

	public CanvasZoom zoom() {
		return ((BenchRootPart) getRoot()).zoom();
	}

	/** Where the sheet lies, in mm. */
	public Bounds sheet() {
		return sheetFigure().sheet();
	}

	/** Whether there is a picture of the job, if only of an empty one. */
	public boolean isReady() {
		return document.picture() != JobPicture.NONE;
	}

	/** Plants a flag on the place of each finding, in place of those that were there. */
	public void plantFlags(List<Finding> findings, Consumer<Finding> clicked) {
		if (flags == null) {
			flags = new FindingFlags(getLayer(LayerConstants.SCALED_FEEDBACK_LAYER), zoom());
			// a bridge and the finding about it often lie in one place
			flagPointer = new FlagPointer(getViewer().getControl(), flags, clicked, () -> BridgeMode.isOn(getViewer()));
		}
		flags.plant(findings);
	}

	/** What each flag says of its cure under the pointer. */
	public void sayCures(Function<Finding, String> cures) {
		if (flags != null) {
			flags.say(cures);
		}
	}

	/** Has the flag of this finding say its measure; null for none. */
	public void raiseFlag(Finding finding) {
		if (flags != null) {
			flags.raise(finding);
		}
	}

	public List<FlagFigure> flags() {
		return flags == null ? List.of() : flags.figures();
	}

	private SheetFigure sheetFigure() {
		return (SheetFigure) getFigure();
	}

	@Override
	protected IFigure createFigure() {
		return new SheetFigure(zoom());
	}

	@Override
	protected void createEditPolicies() {
		// the elements are moved by their own tracker; the sheet itself offers nothing to edit
	}

	@Override
	protected List<Element> getModelChildren() {
		List<Element> elements = new ArrayList<>();
		for (Layer layer : document.job().getLayers()) {
			layer.getElements().stream().filter(Jobs::isShown).forEach(elements::add);
		}
		return elements;
	}

	@Override
	protected void refreshVisuals() {
		if (isReady()) {
			sheetFigure().setSheet(SheetGround.around(document.picture().bounds(), sheet()));
		}
		boolean blank = document.job().getLayers().stream().allMatch(layer -> layer.getElements().isEmpty());
		sheetFigure().setGround(Looks.look(getViewer()).showsStock() ? SheetGround.colour(document.job()) : null);
		sheetFigure().setHint(blank ? Messages.JobPart_emptySheet : ""); //$NON-NLS-1$
	}

	private void refreshAll() {
		refreshChildren();
		refreshVisuals();
		for (Object child : getChildren()) {
			((ElementPart) child).refreshVisuals();
		}
	}

	/** Most elements have the picture that they had before. */
	private void pictureMade() {
		refreshVisuals();
		for (Object child : getChildren()) {
			((ElementPart) child).refreshPicture();
		}
	}

	@Override
	public DragTracker getDragTracker(Request request) {
		if (PanTracker.isAskedFor(request)) {
			return new PanTracker(zoom());
		}
		DragTracker text = Typing.tracker(getViewer(), request);
		return text != null ? text : new MarqueeTracker();
	}

	@Override
	public void activate() {
		super.activate();
		document.addPictureListener(pictureListener);
		follow();
	}

	@Override
	public void deactivate() {
		if (flags != null) {
			flagPointer.dispose();
			flags.remove();
			flags = null;
		}
		unfollow();
		document.removePictureListener(pictureListener);
		super.deactivate();
	}

	private void follow() {
		document.job().eAdapters().add(structure);
		followed.addAll(document.job().getLayers());
		followed.forEach(layer -> layer.eAdapters().add(structure));
		watched.addAll(Jobs.elements(document.job()));
		watched.forEach(element -> element.eAdapters().add(sight));
	}

	private void unfollow() {
		document.job().eAdapters().remove(structure);
		followed.forEach(layer -> layer.eAdapters().remove(structure));
		followed.clear();
		watched.forEach(element -> element.eAdapters().remove(sight));
		watched.clear();
	}
}
