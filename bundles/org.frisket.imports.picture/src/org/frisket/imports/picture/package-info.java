/** Pictures as they come: PNG, JPEG, TIFF, WebP and their like, and pages of PDF, at the size that they say they have. */
package org.frisket.imports.picture;
