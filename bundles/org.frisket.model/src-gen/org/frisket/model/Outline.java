/**
 */
package org.frisket.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Outline</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * An element made of path data.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.frisket.model.Outline#getPathData <em>Path Data</em>}</li>
 * </ul>
 *
 * @generated
 */
public interface Outline extends Element {
	/**
	 * Returns the value of the '<em><b>Path Data</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The path in the grammar of SVG, in mm, y pointing down.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Path Data</em>' attribute.
	 * @see #setPathData(String)
	 * @generated
	 */
	String getPathData();

	/**
	 * Sets the value of the '{@link org.frisket.model.Outline#getPathData <em>Path Data</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Path Data</em>' attribute.
	 * @see #getPathData()
	 * @generated
	 */
	void setPathData(String value);

} // Outline
