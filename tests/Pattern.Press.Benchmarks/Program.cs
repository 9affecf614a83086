using BenchmarkDotNet.Running;
using Pattern.Press.Benchmarks;

BenchmarkSwitcher.FromAssembly(typeof(WholeBuild).Assembly).Run(args);
