/**
 * The page of machines and tools: profiles by their options, the wizard, calibration, and how the studio's settings are
 * read and kept.
 */
package org.frisket.ui.material.internal.machines;
