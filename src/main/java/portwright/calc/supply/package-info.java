/**
 * What a cylinder or a gas main can give: vapour pressure, boil-off, cooling in short draws, hours of gas. Works on SI
 * numbers of its own records; knows nothing of design files.
 */
package portwright.calc.supply;
