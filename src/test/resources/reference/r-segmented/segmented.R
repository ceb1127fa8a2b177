# Makes data.csv (the points) and expected.csv (what R's segmented fits to them).
# Run in this folder: Rscript segmented.R
suppressMessages(library(segmented))
options(digits = 17)

cases <- list()
add <- function(name, x, y, psi) cases[[name]] <<- list(x = x, y = y, psi = psi)

# One break in 101 points: a plateau of 150 kW to 40 %, then 1.8 kW less for each per cent.
soc <- 0:100
add("plateau-taper", soc,
    ifelse(soc <= 40, 150, 150 - 1.8 * (soc - 40)) + rep(c(-0.5, 0.5, 0.25, -0.25), length.out = 101),
    50)

# The data set that comes with the package; most abscissae repeat.
data(stagnant)
stagnant <- stagnant[order(stagnant$x), ]
add("stagnant", stagnant$x, stagnant$y, 0.2)

# Three breaks, points at every half per cent with noise of 0.8 kW.
set.seed(20260314)
soc <- seq(8, 90, by = 0.5)
power <- approx(c(8, 20, 45, 62, 90), c(60, 170, 168, 110, 62), soc)$y + rnorm(length(soc), 0, 0.8)
add("climb-plateau-two-tapers", soc, round(power, 3), c(19, 46, 63))

# A person's readings: 22 rows, whole per cent and whole kilowatt.
soc <- c(10, 13, 16, 19, 23, 27, 30, 34, 37, 41, 44, 48, 51, 54, 58, 61, 65, 68, 72, 75, 79, 82)
power <- round(approx(c(10, 33.4, 57.2, 82), c(121, 119.5, 78.3, 52), soc + rep(c(0.3, -0.2, 0.1, -0.4), length.out = 22))$y)
add("hand-read", soc, power, c(30, 60))

# Five breaks with a steep drop of two per cent.
set.seed(7)
soc <- seq(5, 95, by = 0.5)
power <- approx(c(5, 12, 35, 50, 52.5, 75, 95), c(40, 130, 131, 112, 88, 60, 20), soc)$y +
  rnorm(length(soc), 0, 0.4)
add("steep-drop", soc, round(power, 3), c(12, 35, 50, 52.5, 75))

# The sum of squares has a kink wherever a breakpoint passes a point, where the iteration may stop:
# start it from all around, and keep the fit with the least sum.
best <- function(x, y, psi) {
  shifts <- c(-0.4, -0.1, 0.2)
  starts <- expand.grid(lapply(psi, function(p) p + shifts))
  kept <- NULL
  for (i in seq_len(nrow(starts))) {
    fit <- try(suppressWarnings(segmented(
      lm(y ~ x), seg.Z = ~x, psi = as.numeric(starts[i, ]),
      control = seg.control(n.boot = 0, tol = 1e-12, it.max = 500, alpha = 0.005))), silent = TRUE)
    if (inherits(fit, "segmented") && nrow(fit$psi) == length(psi) &&
        (is.null(kept) || sum(residuals(fit)^2) < sum(residuals(kept)^2) - 1e-9)) kept <- fit
  }
  kept
}

data <- NULL
rows <- NULL
row <- function(name, what, k, value) {
  rows <<- rbind(rows, data.frame(case = name, quantity = what, k = k,
                                  value = trimws(formatC(value, digits = 12, format = "g"))))
}
for (name in names(cases)) {
  case <- cases[[name]]
  x <- case$x
  y <- case$y
  data <- rbind(data, data.frame(case = name, x = trimws(formatC(x, digits = 12, format = "g")),
                                 y = trimws(formatC(y, digits = 12, format = "g"))))
  fit <- best(x, y, case$psi)
  psi <- fit$psi
  for (k in seq_len(nrow(psi))) {
    row(name, "breakpoint", k, psi[k, "Est."])
    row(name, "standard_error", k, psi[k, "St.Err"])
  }
  s <- slope(fit)$x
  for (k in seq_len(nrow(s))) {
    row(name, "slope", k, s[k, "Est."])
    row(name, "slope_standard_error", k, s[k, "St.Err."])
  }
  row(name, "rss", 0, sum(residuals(fit)^2))
}
write.csv(data, "data.csv", row.names = FALSE, quote = FALSE, eol = "\n")
write.csv(rows, "expected.csv", row.names = FALSE, quote = FALSE, eol = "\n")
