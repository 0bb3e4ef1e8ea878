//! Coefficients of the sucrose-water density polynomial and of the water under it.
//!
//! Source: ICUMSA SPS-4 (Bubnik, Emmerich and Emmerich 1985-86), with the
//! Kell-type water equation used beside it.

/// `c_ik`: row `i` multiplies `((t - 20 C) / 100)^i`, its entries multiply `w^1, w^2, ...`, kg/m3.
pub(super) const SUCROSE: [&[f64]; 5] = [
    &[385.1761, 135.3705, 40.9299, -3.9643, 13.4853, -17.289],
    &[-46.272, -7.172, 1.1597, 5.1126, 17.5254],
    &[59.7712, 7.2491, 12.363, -35.4791],
    &[-47.2207, -21.6977, 27.6301],
    &[18.3184, 12.3081],
];

/// Numerator of the water density in powers of t in C, kg/m3; the denominator is `1 + 0.016887236 t`.
pub(super) const WATER: [f64; 6] = [
    999.83952,
    16.952577,
    -0.0079905127,
    -4.6241757e-05,
    1.0584601e-07,
    -2.8103006e-10,
];
