package org.frisket.model.generator;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.eclipse.emf.codegen.ecore.generator.Generator;
import org.eclipse.emf.codegen.ecore.genmodel.GenModel;
import org.eclipse.emf.codegen.ecore.genmodel.GenModelFactory;
import org.eclipse.emf.codegen.ecore.genmodel.GenModelPackage;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenBaseGeneratorAdapter;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenModelGeneratorAdapterFactory;
import org.eclipse.emf.common.util.BasicMonitor;
import org.eclipse.emf.common.util.Diagnostic;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EcorePackage;
import org.eclipse.emf.ecore.plugin.EcorePlugin;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceFactoryImpl;

/**
 * Generates the Java of a model bundle from its {@code model/frisket.ecore} and {@code model/frisket.genmodel}.
 *
 * <p>Arguments: the bundle's folder and, optionally, another folder to write to. Written are {@code src-gen}, from
 * nothing, so that the result depends on the model alone, and {@code model/frisket.genmodel}, brought in step with the
 * classes of the ecore file.
 */
public final class GenerateModel {

	private static final String ECORE = "frisket.ecore";
	private static final String GENMODEL = "frisket.genmodel";

	private final ResourceSet resources = new ResourceSetImpl();

	private GenerateModel() {
		EcorePackage.eINSTANCE.eClass();
		GenModelPackage.eINSTANCE.eClass();
		Map<String, Object> factories = resources.getResourceFactoryRegistry().getExtensionToFactoryMap();
		factories.put("ecore", new XMIResourceFactoryImpl());
		factories.put("genmodel", new XMIResourceFactoryImpl());
	}

	public static void main(String[] arguments) throws IOException {
		if (arguments.length < 1 || arguments.length > 2) {
			throw new IllegalArgumentException("usage: GenerateModel BUNDLE [OUTPUT]");
		}
		Path bundle = Path.of(arguments[0]).toAbsolutePath().normalize();
		Path output = arguments.length == 2 ? Path.of(arguments[1]).toAbsolutePath().normalize() : bundle;
		// The generator also offers a manifest, build.properties and plugin.xml, which the bundle keeps by hand. It
		// works in a folder of its own, and only what is wanted is taken from there.
		Path work = Files.createTempDirectory("frisket-model");
		try {
			copy(bundle.resolve("model"), work.resolve("model"));
			new GenerateModel().generate(work);
			delete(output.resolve("src-gen"));
			copy(work.resolve("src-gen"), output.resolve("src-gen"));
			copy(work.resolve("model"), output.resolve("model"));
		} finally {
			delete(work);
		}
	}

	private void generate(Path project) throws IOException {
		GenModel model = inStep(project.resolve("model"));
		EcorePlugin.getPlatformResourceMap().put(model.getModelPluginID(), URI.createFileURI(project + "/"));
		model.setCanGenerate(true);
		require(model.diagnose(), "the genmodel is not valid");

		Generator generator = new Generator();
		generator.getAdapterFactoryDescriptorRegistry().addDescriptor(GenModelPackage.eNS_URI,
				GenModelGeneratorAdapterFactory.DESCRIPTOR);
		generator.setInput(model);
		require(generator.generate(model, GenBaseGeneratorAdapter.MODEL_PROJECT_TYPE, new BasicMonitor()),
				"the generator failed");
	}

	/** Reads the genmodel and gives every class and feature of the ecore file its place in it. */
	private GenModel inStep(Path folder) throws IOException {
		EPackage ePackage = (EPackage) load(folder.resolve(ECORE)).getContents().get(0);
		Resource resource = load(folder.resolve(GENMODEL));
		GenModel old = (GenModel) resource.getContents().get(0);
		old.reconcile();

		GenModel fresh = GenModelFactory.eINSTANCE.createGenModel();
		fresh.initialize(List.of(ePackage));
		resource.getContents().set(0, fresh);
		fresh.reconcile(old);
		fresh.getForeignModel().clear();
		fresh.getForeignModel().add(ECORE);
		resource.save(Map.of(Resource.OPTION_LINE_DELIMITER, "\n"));
		return fresh;
	}

	private Resource load(Path file) {
		return resources.getResource(URI.createFileURI(file.toString()), true);
	}

	private static void require(Diagnostic diagnostic, String failure) {
		if (diagnostic.getSeverity() >= Diagnostic.ERROR) {
			throw new IllegalStateException(failure + ": " + describe(diagnostic));
		}
	}

	private static String describe(Diagnostic diagnostic) {
		StringBuilder text = new StringBuilder(String.valueOf(diagnostic.getMessage()));
		for (Diagnostic child : diagnostic.getChildren()) {
			text.append("\n  ").append(describe(child));
		}
		return text.toString();
	}

	private static void copy(Path from, Path to) throws IOException {
		for (Path file : contents(from, Comparator.naturalOrder())) {
			Path target = to.resolve(from.relativize(file).toString());
			if (Files.isDirectory(file)) {
				Files.createDirectories(target);
			} else {
				Files.copy(file, target, StandardCopyOption.REPLACE_EXISTING);
			}
		}
	}

	private static void delete(Path folder) throws IOException {
		if (Files.exists(folder)) {
			for (Path file : contents(folder, Comparator.reverseOrder())) {
				Files.delete(file);
			}
		}
	}

	private static List<Path> contents(Path folder, Comparator<Path> order) throws IOException {
		try (Stream<Path> files = Files.walk(folder)) {
			return files.sorted(order).toList();
		}
	}
}
