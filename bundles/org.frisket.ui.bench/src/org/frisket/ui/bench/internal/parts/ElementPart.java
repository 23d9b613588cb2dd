package org.frisket.ui.bench.internal.parts;

import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.emf.common.notify.Adapter;
import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.impl.AdapterImpl;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.EditPolicy;
import org.eclipse.gef.Request;
import org.eclipse.gef.RequestConstants;
import org.eclipse.gef.editparts.AbstractGraphicalEditPart;
import org.eclipse.swt.graphics.Color;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Transform;
import org.frisket.model.Element;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Outline;
import org.frisket.model.Wording;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.editor.BenchDocument;
import org.frisket.ui.bench.internal.figures.ElementFigure;
import org.frisket.ui.bench.internal.looks.CleaningPicture;
import org.frisket.ui.bench.internal.looks.Looks;
import org.frisket.ui.bench.internal.nodes.NodeMode;
import org.frisket.ui.bench.internal.picture.ElementPicture;
import org.frisket.ui.bench.internal.picture.PictureMaker;
import org.frisket.ui.bench.internal.tools.MoveTracker;
import org.frisket.ui.bench.internal.tools.PanTracker;
import org.frisket.ui.bench.internal.typing.Typing;

/**
 * An element on the bench. It shows the last picture that was made, at the place where the element lies now: a moved
 * element is seen at its new place at once, before it is worked through again.
 */
public final class ElementPart extends AbstractGraphicalEditPart {

	private final Element element;
	private final SelectionPolicy selection = new SelectionPolicy();
	private final Adapter follower = new AdapterImpl() {
		@Override
		public void notifyChanged(Notification change) {
			if (!change.isTouch() && getParent() != null) {
				refreshVisuals();
			}
		}
	};

	public ElementPart(Element element) {
		this.element = element;
		setModel(element);
	}

	public Element element() {
		return element;
	}

	public ElementPicture picture() {
		return elementFigure().picture();
	}

	/** From where the picture was made to where the element lies now. */
	public Transform shift() {
		return elementFigure().shift();
	}

	public CanvasZoom zoom() {
		return ((JobPart) getParent()).zoom();
	}

	/** Bounds in mm of what is shown. */
	public Bounds boundsInMm() {
		return elementFigure().boundsInMm();
	}

	/** The box around what is shown, in pixels of the canvas. */
	public Rectangle boundsInPixels() {
		Rectangle box = getFigure().getBounds().getCopy();
		getFigure().translateToAbsolute(box);
		return box;
	}

	/** The colour of the stock. */
	public Color stock() {
		return elementFigure().stock();
	}

	private ElementFigure elementFigure() {
		return (ElementFigure) getFigure();
	}

	@Override
	protected IFigure createFigure() {
		return new ElementFigure(zoom());
	}

	@Override
	protected void createEditPolicies() {
		installEditPolicy(EditPolicy.SELECTION_FEEDBACK_ROLE, selection);
	}

	@Override
	public boolean isSelectable() {
		return super.isSelectable() && !isLocked();
	}

	private boolean isLocked() {
		return Jobs.layerOf(element) == null || Jobs.isLocked(element);
	}

	/** Shows the picture that was made last, if it is another. */
	void refreshPicture() {
		if (lastPicture() != picture()) {
			refreshVisuals();
		}
	}

	private ElementPicture lastPicture() {
		BenchDocument document = ((JobPart) getParent()).document();
		return document.tried().or(document.picture()).element(element.getId());
	}

	@Override
	protected void refreshVisuals() {
		ElementPicture picture = lastPicture();
		Transform place = PictureMaker.transform(element.getTransform());
		Layer layer = Jobs.layerOf(element);
		elementFigure().show(picture, between(picture.placement(), place));
		elementFigure().setStock(layer == null ? null : StockColour.of(layer.getColour()));
		CleaningPicture before = Looks.before(getViewer(), element.getId());
		elementFigure().setLook(Looks.look(getViewer()), before, before == null ? null : between(before.placement(), place));
		elementFigure().setReachable(!isLocked());
		if (isLocked() && getSelected() != SELECTED_NONE) {
			getViewer().deselect(this);
		}
		selection.refresh();
	}

	private static Transform between(Transform from, Transform to) {
		if (from.a() == to.a() && from.b() == to.b() && from.c() == to.c() && from.d() == to.d()) {
			return Transform.translation(to.e() - from.e(), to.f() - from.f());
		}
		return from.determinant() == 0 ? Transform.IDENTITY : from.inverse().then(to);
	}

	@Override
	public DragTracker getDragTracker(Request request) {
		if (PanTracker.isAskedFor(request)) {
			return new PanTracker(zoom());
		}
		DragTracker text = Typing.tracker(getViewer(), request);
		return text != null ? text : new MoveTracker(this);
	}

	@Override
	public void performRequest(Request request) {
		Typing typing = Typing.of(getViewer());
		if (RequestConstants.REQ_OPEN.equals(request.getType()) && element instanceof Wording wording && typing != null) {
			typing.edit(wording);
		}
		NodeMode nodes = NodeMode.of(getViewer());
		if (RequestConstants.REQ_OPEN.equals(request.getType()) && element instanceof Outline outline
				&& nodes != null) {
			// after the click is dealt with, for it brings in another tool
			getViewer().getControl().getDisplay().asyncExec(() -> nodes.begin(outline));
		}
	}

	@Override
	public void activate() {
		super.activate();
		element.eAdapters().add(follower);
	}

	@Override
	public void deactivate() {
		element.eAdapters().remove(follower);
		super.deactivate();
	}
}
