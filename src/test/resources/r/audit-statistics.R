# Worked examples for the audit's statistics, computed once with R and kept as data: the tests do
# not need R. The numbers are invented. Run from this folder:
#   Rscript audit-statistics.R > audit-statistics.csv
# Only functions of R itself (packages base and stats).

put <- function(example, figure, value) {
  cat(sprintf("%s,%s,%s\n", example, figure, sprintf("%.15g", value)), sep = "")
}
series <- function(example, figure, values) {
  put(example, sprintf("%s %d", figure, seq_along(values)), values)
}

cat("# Made by audit-statistics.R with ", R.version.string, "\n", sep = "")
cat("example,figure,value\n")

# A sample of log ratios: mean, interval and median (t.test, median).
x <- c(0.112, -0.031, 0.204, 0.087, 0.151, 0.093, -0.012)
series("sample", "x", x)
test <- t.test(x)
put("sample", "mean", mean(x))
put("sample", "variance", var(x))
put("sample", "low", test$conf.int[1])
put("sample", "high", test$conf.int[2])
put("sample", "median", median(x))

# Two samples that scatter differently (t.test, Welch).
y <- c(0.31, 0.05, 0.44, -0.12, 0.28)
series("difference", "y", y)
welch <- t.test(y, x)
put("difference", "mean", mean(y) - mean(x))
put("difference", "low", welch$conf.int[1])
put("difference", "high", welch$conf.int[2])
put("difference", "chance", welch$p.value)

# The same two numbers a unit: the paired test (t.test).
u <- x[1:5]
series("paired", "x", u)
paired <- t.test(y, u, paired = TRUE)
put("paired", "mean", mean(y - u))
put("paired", "error", paired$stderr)

# Outliers: modified z-scores; mad() with constant 1 is the plain median of the distances.
score <- function(v) 0.6745 * abs(v - median(v)) / mad(v, constant = 1)
v <- c(0.02, -0.05, 0.11, 0.07, 0.65, 0.01, -0.03, 0.09)
series("outliers", "x", v)
series("outliers", "score", score(v))

# Outliers where over half are equal: MAD is 0 and the mean distance stands in.
w <- c(0.1, 0.1, 0.1, 0.1, 0.1, 0.9, 0.12)
stopifnot(mad(w, constant = 1) == 0)
series("outliers-tied", "x", w)
series("outliers-tied", "score", abs(w - median(w)) / (1.2533 * mean(abs(w - median(w)))))

# Trend with ties in both the times and the numbers: Theil-Sen by all pairs of different times, and
# Kendall's test with continuity correction (cor.test), which is Mann-Kendall.
t <- c(0.00, 0.10, 0.25, 0.25, 0.60, 0.90, 1.20, 1.20, 1.20, 1.70, 2.00)
r <- c(0.05, 0.02, 0.09, 0.05, 0.11, 0.05, 0.16, 0.09, 0.20, 0.16, 0.18)
series("trend", "time", t)
series("trend", "x", r)
pairs <- combn(length(t), 2)
apart <- t[pairs[2, ]] != t[pairs[1, ]]
slopes <- ((r[pairs[2, ]] - r[pairs[1, ]]) / (t[pairs[2, ]] - t[pairs[1, ]]))[apart]
put("trend", "slope", median(slopes))
put("trend", "chance", cor.test(t, r, method = "kendall", exact = FALSE, continuity = TRUE)$p.value)

# False alarms (p.adjust).
p <- c(0.001, 0.8, 0.013, 0.04, 0.041, 0.3, 0.013)
series("false-alarms", "chance", p)
series("false-alarms", "adjusted", p.adjust(p, method = "BH"))

# One-way analysis of variance with unequal groups (aov), and the moment estimate of the variance
# between the groups' true means.
g <- factor(c("a", "a", "a", "a", "b", "b", "b", "c", "c", "c", "c", "c"))
z <- c(0.12, 0.05, 0.21, 0.15, 0.33, 0.41, 0.25, 0.02, -0.07, 0.09, 0.01, 0.04)
series("one-way", "group", as.integer(g))
series("one-way", "x", z)
squares <- summary(aov(z ~ g))[[1]][["Mean Sq"]]
n <- table(g)
size <- (sum(n) - sum(n^2) / sum(n)) / (length(n) - 1)
put("one-way", "within", squares[2])
put("one-way", "between", (squares[1] - squares[2]) / size)

# Regression of log actual on log estimate (lm).
e <- log(c(12, 35, 20, 90, 55, 140, 8, 64))
a <- log(c(16, 38, 26, 88, 61, 135, 12, 66))
series("regression", "estimate", e)
series("regression", "actual", a)
fit <- lm(a ~ e)
put("regression", "intercept", coef(fit)[[1]])
put("regression", "slope", coef(fit)[[2]])
put("regression", "low", confint(fit)[2, 1])
put("regression", "high", confint(fit)[2, 2])
