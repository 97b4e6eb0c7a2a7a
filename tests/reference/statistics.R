# Reference values for the statistics, reckoned by R and by nothing of this project.
# Renew with:  Rscript tests/reference/statistics.R tests/reference
# Each file's first line says which R made it; every number is written with 17 digits.

out <- commandArgs(trailingOnly = TRUE)[1]
write_rows <- function(name, header, rows) {
  con <- file(file.path(out, paste0(name, ".csv")), "w")
  writeLines(c(paste("#", R.version.string), header, rows), con)
  close(con)
}
num <- function(x) ifelse(is.na(x), "", sprintf("%.17g", x))
line <- function(...) paste(..., sep = ",")

set.seed(20241)
rows <- replicate(300, {
  n <- sample(1:200, 1); x <- sample(0:n, 1); level <- sample(c(0.8, 0.9, 0.95, 0.99, runif(1, 0.5, 0.999)), 1)
  two <- binom.test(x, n, conf.level = level)$conf.int
  one <- binom.test(x, n, conf.level = level, alternative = "greater")$conf.int
  line(x, n, num(level), num(two[1]), num(two[2]), num(one[1]))
})
write_rows("exact-share", "held,tried,level,lower,upper,lower_one_sided", rows)

set.seed(20242)
rows <- replicate(300, {
  n <- sample(c(8, 20, 60), 1); t <- sample(0:n, 4, replace = TRUE); m <- matrix(t, 2, byrow = TRUE)
  p <- function(a) fisher.test(m, alternative = a)$p.value
  line(t[1], t[2], t[3], t[4], num(p("greater")), num(p("less")), num(p("two.sided")))
})
write_rows("fisher-exact", "a,b,c,d,greater,less,two_sided", rows)

set.seed(20243)
rows <- replicate(250, {
  r <- sample(2:5, 1); k <- sample(2:3, 1); most <- if (r * k > 12) 1 else if (r * k > 8) 2 else 6
  repeat { m <- matrix(sample(0:most, r * k, replace = TRUE), r); if (all(rowSums(m) > 0) && all(colSums(m) > 0)) break }
  cells <- paste(apply(m, 1, paste, collapse = " "), collapse = ";")
  line(cells, num(fisher.test(m, workspace = 2e7)$p.value))
})
write_rows("fisher-table", "table,p", rows)

set.seed(20244)
rows <- replicate(200, {
  n <- sample(1:12, 2, replace = TRUE); q <- round(runif(2), 3); alpha <- sample(c(0.01, 0.05, 0.1), 1)
  power <- 0
  for (x in 0:n[1]) for (y in 0:n[2]) {
    p <- fisher.test(matrix(c(x, y, n[1] - x, n[2] - y), 2))$p.value
    if (p <= alpha * (1 + 1e-9)) power <- power + dbinom(x, n[1], q[1]) * dbinom(y, n[2], q[2])
  }
  line(n[1], num(q[1]), n[2], num(q[2]), num(alpha), num(power))
})
write_rows("trial-power", "pieces,share,other_pieces,other_share,alpha,power", rows)

set.seed(20245)
rows <- replicate(220, {
  k <- sample(2:4, 1); n <- sample(1:(if (k == 2) 20 else 8), k, replace = TRUE)
  alpha <- sample(c(0.05, 0.1, 0.2), 1); power <- sample(c(0.5, 0.8, 0.9), 1)
  one <- sapply(seq_len(k), function(j) {
    p <- sapply(0:n[j], function(x) { m <- cbind(n, 0); m[j, ] <- c(x, n[j] - x); fisher.test(m)$p.value })
    c <- match(FALSE, p <= alpha * (1 + 1e-9)) - 2
    effect <- if (c < 0) NA else 1 - uniroot(function(q) pbinom(c, n[j], q) - power, c(0, 1), tol = 1e-14)$root
    c(p[1], effect)
  })
  line(paste(n, collapse = " "), num(alpha), num(power), num(max(one[1, ])), num(max(one[2, ])))
})
write_rows("least-shown-effect", "pieces,alpha,power,clearest,effect", rows)

set.seed(20246)
rows <- replicate(250, {
  repeat { n <- sample(c(2:30, 40, 60, 100, 150), 1); coverage <- runif(1, 0.5, 0.995); if (qnorm(coverage) * sqrt(n) < 30) break }
  confidence <- runif(1, 0.5, 0.995)
  line(n, num(coverage), num(confidence), num(qt(confidence, n - 1, ncp = qnorm(coverage) * sqrt(n)) / sqrt(n)))
})
write_rows("tolerance-factor", "n,coverage,confidence,k", rows)

set.seed(20247)
rows <- replicate(200, {
  n <- sample(8:30, 1); x <- round(rnorm(n, runif(1, -50, 50), runif(1, 0.1, 20)) + rbinom(n, 1, 0.05) * 60, 3)
  mr <- abs(diff(x)); lim <- mean(x) + c(-3, 3) * mean(mr) / 1.128
  beyond <- paste(which(x < lim[1] | x > lim[2]) - 1, collapse = " "); jumps <- paste(which(mr > 3.267 * mean(mr)), collapse = " ")
  line(paste(num(x), collapse = " "), num(mean(x)), num(sd(x)), num(mean(mr)), num(lim[1]), num(lim[2]), beyond, jumps)
})
write_rows("individuals-chart", "values,mean,deviation,mean_range,lower,upper,outside,range_outside", rows)

# Weeks in which a fixed piece of work is done or not, with chance p: the week of the k-th such week is negative binomial.
set.seed(20248)
rows <- replicate(200, {
  weeks <- sample(8:60, 1); worked <- sample(1:weeks, 1); k <- sample(1:25, 1); p <- worked / weeks; q <- c(0.5, 0.8, 0.95)
  line(weeks, worked, k, paste(k + qnbinom(q - 0.04, k, p), collapse = " "), paste(k + qnbinom(pmin(q + 0.04, 0.999), k, p), collapse = " "))
})
write_rows("finish-week", "weeks,worked,needed,least,most", rows)
