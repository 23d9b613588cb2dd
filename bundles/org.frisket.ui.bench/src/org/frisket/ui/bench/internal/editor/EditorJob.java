package org.frisket.ui.bench.internal.editor;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import java.util.function.Predicate;

import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.osgi.util.NLS;
import org.frisket.editing.Draft;
import org.frisket.editing.EditExecutor;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Wording;
import org.frisket.prepare.Finding;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.checks.Cure;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.bench.TextRange;
import org.frisket.ui.bench.internal.parts.ElementPart;
import org.frisket.ui.bench.internal.parts.JobPart;
import org.frisket.ui.bench.internal.parts.Selection;
import org.frisket.ui.bench.internal.tools.PickTool;
import org.frisket.ui.bench.internal.typing.Typing;

/** The job of an editor as the views see it. */
final class EditorJob implements JobOnBench {

	private final BenchSurface editor;
	private final List<Listener> listeners = new CopyOnWriteArrayList<>();
	private final Draft draft;
	private final EditorPreview preview;
	private List<Finding> findings = List.of();
	private Map<Finding, List<Cure>> cures = Map.of();
	private boolean curesKnown;

	EditorJob(BenchSurface editor) {
		this.editor = editor;
		editor.viewer().addSelectionChangedListener(event -> listeners.forEach(Listener::selectionChanged));
		draft = new Draft(edits(), editor::jobChanged);
		preview = new EditorPreview(editor);
		editor.commandStack().addCommandStackEventListener(event -> {
			// an edit, or an undo, of the job as it was before the draft
			if (event.isPreChangeEvent()) {
				draft.drop();
			}
		});
	}

	void jobChanged() {
		curesKnown = false;
		// it was made of the job as it was
		preview.hide();
		listeners.forEach(Listener::jobChanged);
	}

	void previewChanged() {
		listeners.forEach(Listener::previewChanged);
	}

	void rangeChanged() {
		listeners.forEach(Listener::selectionChanged);
	}

	void pictureChanged() {
		// findings stay as they are until all the checks are through: a list that shrinks and grows with each stroke
		// of a key cannot be read
		if (editor.isUpToDate()) {
			findings = editor.document().picture().findings();
			if (editor.viewer().getContents() instanceof JobPart part) {
				part.plantFlags(findings, this::flagClicked);
			}
		}
		listeners.forEach(Listener::pictureChanged);
	}

	void curesMade(Map<Finding, List<Cure>> made) {
		Map<Finding, List<Cure>> known = curesKnown ? new HashMap<>(cures) : new HashMap<>();
		known.putAll(made);
		cures = known;
		curesKnown = true;
		if (editor.viewer().getContents() instanceof JobPart part) {
			part.sayCures(this::said);
		}
		listeners.forEach(Listener::curesMade);
	}

	private String said(Finding finding) {
		List<Cure> known = cures(finding);
		int number = findings.indexOf(finding) + 1;
		return known.isEmpty() ? finding.cure() : CureKey.of(number).map(key -> NLS.bind(Messages.EditorJob_cure, key,
				known.get(0).name())).orElse(known.get(0).name());
	}

	private void flagClicked(Finding finding) {
		reveal(finding);
		listeners.forEach(listener -> listener.findingChosen(finding));
	}

	@Override
	public boolean areCuresKnown() {
		return curesKnown;
	}

	@Override
	public boolean areCuresKnown(Finding finding) {
		return curesKnown && cures.containsKey(finding);
	}

	@Override
	public void seekCures(Finding finding) {
		if (isUpToDate() && !areCuresKnown(finding)) {
			editor.seekCures(finding);
		}
	}

	@Override
	public List<Cure> cures(Finding finding) {
		return cures.getOrDefault(finding, List.of());
	}

	@Override
	public void cure(Cure cure) {
		if (isUpToDate() && curesKnown) {
			cure.edit(job()).ifPresent(edits()::execute);
		}
	}

	@Override
	public Draft draft() {
		return draft;
	}

	@Override
	public EditorPreview preview() {
		return preview;
	}

	@Override
	public Job job() {
		return editor.document().job();
	}

	@Override
	public EditExecutor edits() {
		return edit -> editor.commandStack().execute(new EditCommand(edit));
	}

	@Override
	public Optional<PreparedJob> prepared() {
		return Optional.ofNullable(editor.document().picture().prepared());
	}

	@Override
	public List<Finding> findings() {
		return findings;
	}

	@Override
	public boolean isUpToDate() {
		return editor.isUpToDate();
	}

	@Override
	public List<Element> selection() {
		return Selection.elements(editor.viewer());
	}

	@Override
	public Optional<TextRange> textRange() {
		return editor.typing() == null ? Optional.empty() : editor.typing().range();
	}

	@Override
	public void select(List<? extends Element> elements) {
		Set<Element> wanted = new HashSet<>(elements);
		List<ElementPart> parts = Selection.all(editor.viewer()).stream()
				.filter(part -> wanted.contains(part.element()) && part.isSelectable()).toList();
		if (!Set.copyOf(parts).equals(Set.copyOf(Selection.parts(editor.viewer())))) {
			editor.viewer().setSelection(new StructuredSelection(parts));
		}
	}

	@Override
	public void pick(String prompt, Predicate<Element> wanted, Consumer<Element> picked) {
		editor.typing().end(true);
		editor.getSite().getPage().activate(editor);
		editor.viewer().getControl().setFocus();
		editor.viewer().getEditDomain().setActiveTool(new PickTool(prompt, wanted, picked));
	}

	@Override
	public Bounds bounds(List<? extends Element> elements) {
		Set<Element> wanted = new HashSet<>(elements);
		return Selection.all(editor.viewer()).stream().filter(part -> wanted.contains(part.element()))
				.map(ElementPart::boundsInMm).reduce(Bounds.EMPTY, Bounds::with);
	}

	@Override
	public Point openPlace() {
		return editor.typing().openPlace();
	}

	@Override
	public Optional<Wording> typed() {
		return Optional.ofNullable(editor.typing()).filter(Typing::isActive).map(Typing::wording);
	}

	@Override
	public void type(String characters) {
		if (typed().isPresent()) {
			editor.typing().insert(characters);
		}
	}

	@Override
	public void importFiles(List<Path> files, Optional<Point> place) {
		editor.takeIn(files, place);
	}

	@Override
	public void reveal(Point place) {
		editor.zoom().reveal(place);
	}

	@Override
	public void reveal(Finding finding) {
		Jobs.element(job(), finding.element()).ifPresent(element -> select(List.of(element)));
		if (editor.viewer().getContents() instanceof JobPart part) {
			part.raiseFlag(finding);
		}
		reveal(finding.place());
	}

	@Override
	public void addListener(Listener listener) {
		listeners.add(listener);
	}

	@Override
	public void removeListener(Listener listener) {
		listeners.remove(listener);
	}
}
