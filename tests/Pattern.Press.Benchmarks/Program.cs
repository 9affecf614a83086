using BenchmarkDotNet.Running;
using Pattern.Press.Benchmarks;

if (args is ["quick"])
    Quick.Run(Console.Out);
else
    BenchmarkSwitcher.FromAssembly(typeof(WholeBuild).Assembly).Run(args);
