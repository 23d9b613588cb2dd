package org.frisket.page;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;

import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;

/** PNG with its resolution (the pHYs chunk of ISO/IEC 15948), so that it prints at its size. */
public final class Png {

	private static final String FORMAT = "javax_imageio_png_1.0";

	private Png() {
	}

	public static void write(BufferedImage image, int dpi, OutputStream out) throws IOException {
		ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
		try (ImageOutputStream stream = ImageIO.createImageOutputStream(out)) {
			ImageWriteParam parameters = writer.getDefaultWriteParam();
			IIOMetadata metadata = writer.getDefaultImageMetadata(ImageTypeSpecifier.createFromRenderedImage(image),
					parameters);
			IIOMetadataNode root = new IIOMetadataNode(FORMAT);
			root.appendChild(resolution(Math.round(dpi / 0.0254f)));
			metadata.mergeTree(FORMAT, root);
			writer.setOutput(stream);
			writer.write(metadata, new IIOImage(image, null, metadata), parameters);
		} finally {
			writer.dispose();
		}
	}

	private static IIOMetadataNode resolution(int pixelsPerMetre) {
		IIOMetadataNode node = new IIOMetadataNode("pHYs");
		node.setAttribute("pixelsPerUnitXAxis", Integer.toString(pixelsPerMetre));
		node.setAttribute("pixelsPerUnitYAxis", Integer.toString(pixelsPerMetre));
		node.setAttribute("unitSpecifier", "meter");
		return node;
	}
}
