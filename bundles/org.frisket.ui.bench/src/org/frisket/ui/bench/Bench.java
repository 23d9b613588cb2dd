package org.frisket.ui.bench;

import java.nio.file.Path;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IEditorReference;
import org.eclipse.ui.IElementFactory;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.XMLMemento;
import org.frisket.ui.bench.internal.files.Recovery;
import org.frisket.ui.bench.internal.files.Unsaved;
import org.frisket.ui.bench.internal.imports.ArtImport;
import org.frisket.ui.bench.internal.places.Copies;

/** Ids that the rest of the screen needs of the bench. */
public final class Bench {

	/** The editor that shows a job. */
	public static final String EDITOR_ID = "org.frisket.ui.bench.editor"; //$NON-NLS-1$

	/** The context in which the keys of the bench hold. */
	public static final String CONTEXT_ID = "org.frisket.ui.bench.context"; //$NON-NLS-1$

	/** The context in which keys hold while a wording is typed. */
	public static final String TYPING_CONTEXT_ID = "org.frisket.ui.bench.typing"; //$NON-NLS-1$

	/** The context in which keys hold while nodes of a path are edited. */
	public static final String NODES_CONTEXT_ID = "org.frisket.ui.bench.nodes.context"; //$NON-NLS-1$

	/** The context in which keys hold while single letters of a wording are nudged. */
	public static final String LETTERS_CONTEXT_ID = "org.frisket.ui.bench.letters.context"; //$NON-NLS-1$

	/** The command that asks for a job file and opens it. */
	public static final String OPEN_JOB_COMMAND_ID = "org.frisket.ui.bench.command.openJob"; //$NON-NLS-1$

	/** The command that lays a new, empty job on the bench. */
	public static final String NEW_JOB_COMMAND_ID = "org.frisket.ui.bench.command.newJob"; //$NON-NLS-1$

	/** The command that asks for a format and a place and writes the job there. */
	public static final String EXPORT_COMMAND_ID = "org.frisket.ui.bench.command.export"; //$NON-NLS-1$

	/** The command that carries out the cure of a finding. */
	public static final String CURE_COMMAND_ID = "org.frisket.ui.bench.command.cure"; //$NON-NLS-1$

	/** The parameter of that command: the number of the finding, from 1. */
	public static final String CURE_NUMBER = CURE_COMMAND_ID + ".number"; //$NON-NLS-1$

	/** The command that opens the job file its parameter names. */
	public static final String OPEN_RECENT_COMMAND_ID = "org.frisket.ui.bench.command.openRecent"; //$NON-NLS-1$

	/** The parameter of that command: the path of the file. */
	public static final String OPEN_RECENT_PATH = OPEN_RECENT_COMMAND_ID + ".path"; //$NON-NLS-1$

	/** The command that asks for files of others and lays them into the job in front. */
	public static final String IMPORT_COMMAND_ID = "org.frisket.ui.bench.command.import"; //$NON-NLS-1$

	private Bench() {
	}

	/**
	 * Lays a file on a bench of its own: a job as it is, art of others as a new job made of it. The art comes a little
	 * later, and what is wrong with it is shown then.
	 */
	public static void open(IWorkbenchPage page, Path file) throws PartInitException {
		if (ArtImport.isArt(file)) {
			ArtImport.open(page, file);
		} else {
			page.openEditor(new JobInput(file), EDITOR_ID);
		}
	}

	/** Where the file of a job on a bench is; null if it has none yet. */
	public static Path fileOf(JobOnBench bench) {
		for (IWorkbenchWindow window : PlatformUI.getWorkbench().getWorkbenchWindows()) {
			for (IWorkbenchPage page : window.getPages()) {
				for (IEditorReference reference : page.getEditorReferences()) {
					IEditorPart editor = reference.getEditor(false);
					if (editor != null && Adapters.adapt(editor, JobOnBench.class) == bench) {
						return Adapters.adapt(editor.getEditorInput(), Path.class);
					}
				}
			}
		}
		return null;
	}

	/** Null if nothing of this installation knows the place. */
	private static IEditorInput placed(String key) {
		IElementFactory factory = PlatformUI.getWorkbench()
				.getElementFactory(key.substring(0, Math.max(0, key.indexOf(':'))));
		XMLMemento memento = XMLMemento.createWriteRoot("job"); //$NON-NLS-1$
		memento.putString(PlaceInput.KEY, key);
		return factory != null && factory.createElement(memento) instanceof IEditorInput input ? input : null;
	}

	/** Opens what was not saved when the program last ended, as it was then. Call it once, when a window is there. */
	public static void reopenUnsaved(IWorkbenchPage page) throws PartInitException {
		for (Unsaved unsaved : Recovery.all()) {
			IEditorInput input = placed(Copies.key(unsaved));
			if (input != null) {
				page.openEditor(input, EDITOR_ID);
			}
		}
	}
}
