package org.frisket.ui.bench.internal.handlers;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.frisket.editing.Edit;
import org.frisket.editing.arranging.Box;
import org.frisket.geometry.Bounds;
import org.frisket.model.Element;
import org.frisket.prepare.OwnPath;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.editor.EditCommand;
import org.frisket.ui.bench.internal.parts.ElementPart;
import org.frisket.ui.bench.internal.parts.Selection;

/** One edit of the selected elements; nothing happens if none is selected. */
public abstract class ElementHandler extends BenchHandler {

	@Override
	protected final void execute(BenchEditor bench, ExecutionEvent event) throws ExecutionException {
		bench.typing().end(true);
		List<Element> elements = Selection.elements(bench.viewer());
		if (!elements.isEmpty()) {
			Edit edit = edit(bench, elements, event);
			bench.commandStack().execute(new EditCommand(edit));
			done(bench, edit);
		}
	}

	protected abstract Edit edit(BenchEditor bench, List<Element> elements, ExecutionEvent event)
			throws ExecutionException;

	/** What follows the edit, such as another selection. */
	protected void done(BenchEditor bench, Edit edit) {
		// mostly nothing
	}

	/** What elements of a kind come to, as path data in their own frames; empty texts for those not worked through yet. */
	protected static <E extends Element> Map<E, String> paths(BenchEditor bench, List<Element> elements,
			Class<E> kind) {
		PreparedJob prepared = bench.document().picture().prepared();
		Map<E, String> paths = new LinkedHashMap<>();
		elements.stream().filter(kind::isInstance).map(kind::cast).forEach(element -> {
			// only what is worked through as it is now
			Optional<PreparedElement> shown = Optional.ofNullable(prepared).flatMap(all -> all.element(element.getId()))
					.filter(found -> EcoreUtil.equals(found.element(), element));
			paths.put(element, shown.map(OwnPath::of).orElse("")); //$NON-NLS-1$
		});
		return paths;
	}

	/** The box around what the edit maps itself, without the mats that follow. */
	protected static Bounds bounds(BenchEditor bench) {
		return Selection.movableParts(bench.viewer()).stream().map(ElementPart::boundsInMm).reduce(Bounds.EMPTY,
				Bounds::with);
	}

	/** The box of each selected element that shows anything. */
	protected static Map<Element, Box> boxes(BenchEditor bench) {
		Map<Element, Box> boxes = new LinkedHashMap<>();
		for (ElementPart part : Selection.parts(bench.viewer())) {
			Bounds bounds = part.boundsInMm();
			if (!bounds.isEmpty()) {
				boxes.put(part.element(), new Box(bounds.minX(), bounds.minY(), bounds.maxX(), bounds.maxY()));
			}
		}
		return boxes;
	}

	/** One of the names of an enumeration, as the key or menu item states it. */
	public static <E extends Enum<E>> E choice(ExecutionEvent event, String parameter, Class<E> type)
			throws ExecutionException {
		String text = event.getParameter(parameter);
		try {
			return Enum.valueOf(type, String.valueOf(text));
		} catch (IllegalArgumentException e) {
			throw new ExecutionException("not one of " + type.getSimpleName() + ": " + text, e); //$NON-NLS-1$
		}
	}
}
