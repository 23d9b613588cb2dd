package org.frisket.ui.bench.internal.editor;

import org.eclipse.gef.GraphicalViewer;
import org.frisket.model.Job;
import org.frisket.ui.bench.internal.bridges.BridgeMode;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.grips.FlowGrips;
import org.frisket.ui.bench.internal.grips.SelectionGrips;
import org.frisket.ui.bench.internal.handlers.sight.LookHandler;
import org.frisket.ui.bench.internal.letters.LetterMode;
import org.frisket.ui.bench.internal.looks.Looks;
import org.frisket.ui.bench.internal.nodes.NodeMode;
import org.frisket.ui.bench.internal.parts.KeptSelection;
import org.frisket.ui.bench.internal.rulers.Rulers;
import org.frisket.ui.bench.internal.snap.Snapping;
import org.frisket.ui.bench.internal.tools.SpacePan;
import org.frisket.ui.bench.internal.typing.Typing;
import org.frisket.ui.bench.internal.typing.TypingHost;

/** All that a bench can be worked with, and what one tool in use means for the others. They go with the viewer. */
final class BenchTools implements TypingHost, NodeMode.Host, LetterMode.Host, BridgeMode.Host {

	private final BenchSurface editor;
	private final BenchPicture picture;
	private final BenchKeys keys;
	private final Looks looks;
	private final Typing typing;
	private final SelectionGrips grips;
	private final FlowGrips flow;
	private final NodeMode nodes;
	private final LetterMode letters;
	private final BridgeMode bridges;
	private final Rulers rulers;

	/** @param editor one whose viewer shows its job */
	BenchTools(BenchSurface editor, BenchPicture picture, BenchKeys keys) {
		this.editor = editor;
		this.picture = picture;
		this.keys = keys;
		GraphicalViewer viewer = editor.viewer();
		BenchDocument document = editor.document();
		CanvasZoom zoom = editor.zoom();
		new KeptSelection(viewer);
		looks = new Looks(viewer, document, () -> LookHandler.announce(editor.getSite()));
		typing = new Typing(viewer, document.job(), editor.commandStack(), this);
		new SpacePan(viewer.getControl(), zoom, typing::isActive);
		new Snapping(viewer, document.job());
		grips = new SelectionGrips(viewer, document, zoom);
		flow = new FlowGrips(viewer, document, zoom, this::preview);
		nodes = new NodeMode(viewer, document, editor.commandStack(), this);
		letters = new LetterMode(viewer, document, editor.commandStack(), this);
		bridges = new BridgeMode(viewer, document, editor.commandStack(), this);
		rulers = new Rulers(viewer.getControl().getParent(), viewer, document, zoom);
	}

	Looks looks() {
		return looks;
	}

	Typing typing() {
		return typing;
	}

	SelectionGrips grips() {
		return grips;
	}

	FlowGrips flow() {
		return flow;
	}

	NodeMode nodes() {
		return nodes;
	}

	LetterMode letters() {
		return letters;
	}

	BridgeMode bridges() {
		return bridges;
	}

	Rulers rulers() {
		return rulers;
	}

	@Override
	public void follow(String id) {
		picture.followTyping(id);
	}

	@Override
	public void retyped() {
		editor.jobChanged();
	}

	@Override
	public void rangeChanged() {
		editor.onBench().rangeChanged();
	}

	@Override
	public void setTyping(boolean isTyping) {
		if (isTyping) {
			// what the pointer did before ends: nodes, the pen
			editor.viewer().getEditDomain().loadDefaultTool();
		}
		keys.setTyping(isTyping);
	}

	@Override
	public void preview(Job job) {
		picture.followOn(job);
	}

	@Override
	public void setEditingNodes(boolean editing) {
		keys.setEditingNodes(editing);
		setGripsAway(editing);
	}

	@Override
	public void followLetters(String id) {
		picture.followLetters(id);
	}

	@Override
	public void setNudgingLetters(boolean nudging) {
		keys.setNudgingLetters(nudging);
		setGripsAway(nudging);
	}

	@Override
	public void setSettingBridges(boolean setting) {
		setGripsAway(setting);
	}

	private void setGripsAway(boolean away) {
		grips.setAway(away);
		flow.setAway(away);
	}

	@Override
	public void say(String message) {
		editor.say(message);
	}

	void close() {
		looks.close();
	}
}
