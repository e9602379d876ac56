using System.Globalization;
using Pattress.Bench;

if (args is ["simulate", ..]) SimulatorReport.Run(Number(1, 1000), Number(2, 20240601));
else if (args is ["trials"]) TrialsReport.Run();
else if (args is ["rules"]) RuleTiming.Run();
else if (args is ["lines"]) SupportsTiming.Run();
else if (args is ["buying", ..]) await BuyingReport.Run(Number(1, 300));
else BenchmarkDotNet.Running.BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);

int Number(int i, int otherwise) => args.Length > i ? int.Parse(args[i], CultureInfo.InvariantCulture) : otherwise;
