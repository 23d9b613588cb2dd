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
 *   <li>{@link org.frisket.model.Outline#getCornerRadius <em>Corner Radius</em>}</li>
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

	/**
	 * Returns the value of the '<em><b>Corner Radius</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Radius in mm that its corners are rounded with; 0 leaves them as they are.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Corner Radius</em>' attribute.
	 * @see #setCornerRadius(double)
	 * @generated
	 */
	double getCornerRadius();

	/**
	 * Sets the value of the '{@link org.frisket.model.Outline#getCornerRadius <em>Corner Radius</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Corner Radius</em>' attribute.
	 * @see #getCornerRadius()
	 * @generated
	 */
	void setCornerRadius(double value);

} // Outline
