package org.frisket.ui.sheets.internal.sheets.surface;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.IFigure;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.EditPartFactory;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.MouseWheelHandler;
import org.eclipse.gef.editparts.LayerManager;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.frisket.geometry.Bounds;
import org.frisket.model.Job;
import org.frisket.model.Placement;
import org.frisket.model.Sheet;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.internal.canvas.BenchDomain;
import org.frisket.ui.bench.internal.canvas.BenchViewer;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.figures.GhostFigure;
import org.frisket.ui.bench.internal.screen.ScreenWatch;
import org.frisket.ui.bench.internal.tools.SpacePan;

/** The surface itself: zoomed and pushed about like the bench. Only for the UI thread. */
public final class SheetsSurface {

	/** How much larger one notch of the wheel makes things. */
	private static final double WHEEL_FACTOR = 1.2;
	private static final double LINES_PER_NOTCH = 3;
	/** By how much one notch with Alt turns a part, in degrees. */
	private static final double TURN = 15;
	/** What is written below sheets, as a share of their height, so that it is seen when they fit. */
	private static final double CAPTION_SHARE = 0.12;

	private final Board board;
	private final BenchViewer viewer = new BenchViewer();
	private final SheetsRoot root;
	private final List<GhostFigure> ghosts = new ArrayList<>();
	private final SheetFlags flags;
	private Runnable selectionChanged = () -> { };
	private boolean fitDue = true;

	public SheetsSurface(Composite parent, Board board) {
		this.board = board;
		viewer.createControl(parent);
		root = new SheetsRoot();
		viewer.setRootEditPart(root);
		viewer.setEditPartFactory(new Parts());
		BenchDomain domain = new BenchDomain(null);
		domain.addViewer(viewer);
		domain.loadDefaultTool();
		viewer.setProperty(MouseWheelHandler.KeyGenerator.getKey(SWT.MOD1),
				(MouseWheelHandler) (event, at) -> zoomAtPointer(event));
		viewer.setProperty(MouseWheelHandler.KeyGenerator.getKey(SWT.MOD3),
				(MouseWheelHandler) (event, at) -> turnByWheel(event));
		viewer.addSelectionChangedListener(event -> selectionChanged.run());
		flags = new SheetFlags(this, viewer);
		configure((FigureCanvas) viewer.getControl());
		show(null);
	}

	private void configure(FigureCanvas canvas) {
		canvas.setBackground(ThemeColour.BENCH_DESK.colour());
		// fading bars would hide what lies under them and set off repaints of everything
		canvas.setScrollbarsMode(SWT.NONE);
		canvas.setScrollBarVisibility(FigureCanvas.ALWAYS);
		// figures give their paths back when they leave, which none does of itself as the window closes
		canvas.addListener(SWT.Dispose, event -> root.getFigure().removeNotify());
		canvas.addListener(SWT.Resize, event -> canvas.getDisplay().asyncExec(this::fitIfDue));
		new ScreenWatch(canvas, screen -> zoom().setScreen(screen));
		new SpacePan(canvas, zoom(), () -> false);
	}

	/** Edit parts for what is shown. */
	private static final class Parts implements EditPartFactory {

		@Override
		public EditPart createEditPart(EditPart context, Object model) {
			return model instanceof SheetsPart.Content content ? new SheetsPart(content)
					: new PlacementPart((Placement) model);
		}
	}

	/** What is said where there is no sheet. */
	public void setHint(String text) {
		sheets().figure().setHint(text);
	}

	/** Shows the sheets of another job. @param job null for none */
	public void show(Job job) {
		hideGhosts();
		flags.plant(List.of());
		viewer.setContents(new SheetsPart.Content(job, board));
		fitDue = true;
		update();
	}

	/** Brings all up to date with the job and with what is known of its parts. */
	public void update() {
		sheets().update();
		fitIfDue();
	}

	/** The canvas, for focus, tool tips and menus. */
	public FigureCanvas canvas() {
		return (FigureCanvas) viewer.getControl();
	}

	public CanvasZoom zoom() {
		return root.zoom();
	}

	/** Where sheets lie on the surface. */
	public Spread spread() {
		return sheets().spread();
	}

	SheetsPart sheets() {
		return (SheetsPart) viewer.getContents();
	}

	/** The sheet that is worked on; null if there is none. */
	public Sheet current() {
		return sheets().current();
	}

	public void setOffcutShown(boolean shown) {
		sheets().figure().setOffcutShown(shown);
	}

	/** @param listener told when other parts are selected, or another sheet is current */
	public void whenSelected(Runnable listener) {
		selectionChanged = listener;
	}

	/** The selected copies, in the order of selection. */
	public List<Placement> selection() {
		return selected(viewer).stream().map(PlacementPart::placement).toList();
	}

	/** Selects these copies and no others. */
	public void select(List<Placement> placements) {
		List<EditPart> chosen = new ArrayList<>();
		for (PlacementPart part : parts(viewer)) {
			if (placements.contains(part.placement()) && part.isShown()) {
				chosen.add(part);
			}
		}
		viewer.setSelection(new StructuredSelection(chosen));
	}

	public void selectAll() {
		select(parts(viewer).stream().map(PlacementPart::placement).toList());
	}

	/** Around a copy on the surface, in mm; empty if it is not seen. */
	public Bounds box(Placement placement) {
		return parts(viewer).stream().filter(part -> part.placement() == placement && part.isShown()).findFirst()
				.map(part -> part.figure().box()).orElse(Bounds.EMPTY);
	}

	/** How many copies are seen. */
	public int shown() {
		return (int) parts(viewer).stream().filter(PlacementPart::isShown).count();
	}

	/** Shows all sheets, with what is written below them. */
	public void fit() {
		Bounds all = sheets().shownSpread().all();
		if (!all.isEmpty()) {
			canvas().getViewport().getUpdateManager().performUpdate();
			zoom().fit(new Bounds(all.minX(), all.minY(), all.maxX(), all.maxY() + CAPTION_SHARE * all.height()));
		}
	}

	/** Shows the selected copies as large as they fit. */
	public void fitSelection() {
		zoom().fit(selection().stream().map(this::box).reduce(Bounds.EMPTY, Bounds::with));
	}

	/** Has all sheets shown when there are other ones. */
	public void fitSoon() {
		fitDue = true;
		fitIfDue();
	}

	private void fitIfDue() {
		if (!fitDue || viewer.getControl() == null || canvas().isDisposed() || sheets().spread().all().isEmpty()) {
			return;
		}
		org.eclipse.swt.graphics.Rectangle room = canvas().getClientArea();
		if (room.width > 1 && room.height > 1) {
			fitDue = false;
			fit();
		}
	}

	/** Shows a layout that is not made yet in place of the present one. @param planned sheets that are in no job */
	public void showGhosts(List<Sheet> planned) {
		boolean others = planned.size() != sheets().shownSpread().places().size();
		Spread spread = new Spread(planned);
		sheets().showPlan(spread);
		IFigure layer = ghostLayer();
		List<Placement> places = planned.stream().flatMap(sheet -> sheet.getPlacements().stream())
				.filter(placement -> board.picture(placement).isPresent()).toList();
		while (ghosts.size() > places.size()) {
			layer.remove(ghosts.remove(ghosts.size() - 1));
		}
		while (ghosts.size() < places.size()) {
			GhostFigure ghost = new GhostFigure(zoom());
			layer.add(ghost);
			ghosts.add(ghost);
		}
		for (int i = 0; i < ghosts.size(); i++) {
			ghosts.get(i).show(board.picture(places.get(i)).get().shape(), spread.placeOf(places.get(i)));
		}
		if (others) {
			fit();
		}
	}

	private IFigure ghostLayer() {
		return LayerManager.Helper.find(root).getLayer(LayerConstants.SCALED_FEEDBACK_LAYER);
	}

	/** Shows the sheets as they are again. */
	public void hideGhosts() {
		ghosts.forEach(ghostLayer()::remove);
		ghosts.clear();
		if (sheets() != null && sheets().isPlanShown()) {
			sheets().update();
			fitSoon();
		}
	}

	/** How many ghosts are seen. */
	public int ghosts() {
		return ghosts.size();
	}

	/** Flags for what is wrong, in place of those before. */
	public SheetFlags flags() {
		return flags;
	}

	private void zoomAtPointer(Event event) {
		event.doit = false;
		zoom().about(event.x, event.y, Math.pow(WHEEL_FACTOR, event.count / LINES_PER_NOTCH));
	}

	private void turnByWheel(Event event) {
		event.doit = false;
		List<Placement> turned = selection();
		if (!turned.isEmpty()) {
			board.turn(turned, event.count > 0 ? -TURN : TURN);
		}
	}

	static List<PlacementPart> parts(EditPartViewer viewer) {
		List<PlacementPart> parts = new ArrayList<>();
		for (Object child : viewer.getContents().getChildren()) {
			parts.add((PlacementPart) child);
		}
		return parts;
	}

	static List<PlacementPart> selected(EditPartViewer viewer) {
		List<PlacementPart> parts = new ArrayList<>();
		for (Object part : viewer.getSelectedEditParts()) {
			if (part instanceof PlacementPart placement) {
				parts.add(placement);
			}
		}
		return parts;
	}
}
